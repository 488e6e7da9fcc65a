package rigbrief.batch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;

/** Finds the briefs of a batch, and gives each result a name of its own. */
public final class BatchBriefs {
    private static final Set<String> ENDINGS = Set.of("yaml", "yml", "json");

    private BatchBriefs() {}

    /**
     * The briefs that are named: files as they come, and of a folder the files in it that end in
     * {@code .yaml}, {@code .yml} or {@code .json}, in the order of their names. A file that is
     * named twice counts once.
     *
     * <p>A result is called as its brief without the ending. Where several briefs would have one
     * name, each of them keeps its ending ({@code potter-yaml}, {@code potter-json}), and a number
     * follows where that is not enough.
     *
     * @param faults where it goes that a folder holds no brief, or can't be looked into
     */
    public static List<BatchBrief> of(List<Path> named, Faults faults) {
        Map<Path, Path> files = new LinkedHashMap<>();
        for (Path path : named) {
            List<Path> found = Files.isDirectory(path) ? inside(path, faults) : List.of(path);
            found.forEach(file -> files.putIfAbsent(file.toAbsolutePath().normalize(), file));
        }
        return called(List.copyOf(files.values()));
    }

    private static List<Path> inside(Path folder, Faults faults) {
        List<Path> briefs = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(BatchBriefs::isBrief).forEach(briefs::add);
        } catch (IOException unreadable) {
            fault(folder, "a folder that can't be opened", "check its permissions", faults);
            return briefs;
        }
        if (briefs.isEmpty()) {
            fault(folder, "a folder without any", "put briefs into it, or name another", faults);
        }
        briefs.sort((a, b) -> name(a).compareTo(name(b)));
        return briefs;
    }

    private static void fault(Path folder, String found, String advice, Faults faults) {
        String expected = "briefs that end in .yaml, .yml or .json";
        faults.add(new Fault(folder.toString(), 1, 1, "briefs", found, expected, advice));
    }

    private static boolean isBrief(Path file) {
        return !name(file).startsWith(".")
                && ENDINGS.contains(ending(name(file)).toLowerCase(Locale.ROOT))
                && !Files.isDirectory(file);
    }

    private static List<BatchBrief> called(List<Path> files) {
        Map<String, Integer> like = new HashMap<>();
        files.forEach(file -> like.merge(key(stem(name(file))), 1, Integer::sum));
        Set<String> taken = new HashSet<>();
        for (Path file : files) {
            if (like.get(key(stem(name(file)))) == 1) {
                taken.add(key(stem(name(file))));
            }
        }
        List<BatchBrief> briefs = new ArrayList<>();
        for (Path file : files) {
            boolean alone = like.get(key(stem(name(file)))) == 1;
            briefs.add(new BatchBrief(file, alone ? stem(name(file)) : other(name(file), taken)));
        }
        return briefs;
    }

    private static String other(String name, Set<String> taken) {
        String longer = ending(name).isEmpty() ? name : stem(name) + "-" + ending(name);
        String free = longer;
        for (int i = 2; !taken.add(key(free)); i++) {
            free = longer + "-" + i;
        }
        return free;
    }

    /** Names that some file systems hold for the same. */
    private static String key(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static String name(Path file) {
        return String.valueOf(file.getFileName());
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1);
    }

    /** The name without its ending, and without what would make it a hidden or a summary file. */
    private static String stem(String name) {
        int dot = name.lastIndexOf('.');
        String stem = dot > 0 ? name.substring(0, dot) : name;
        boolean plain = !stem.startsWith(".") && !stem.endsWith(".csv");
        return plain ? stem : "brief-" + stem.replace('.', '-');
    }
}
