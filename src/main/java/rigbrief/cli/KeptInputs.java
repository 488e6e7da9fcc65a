package rigbrief.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Keeps output from taking the place of what a command reads. {@code --force} is meant for an older
 * output of the same name, never for the brief that was typed one argument too far.
 */
final class KeptInputs {
    private final List<Path> folders;
    private final List<Path> files;

    private KeptInputs(List<Path> folders, List<Path> files) {
        this.folders = folders;
        this.files = files;
    }

    /**
     * What a command reads.
     *
     * @param files names of files; null for one that is not given
     */
    static KeptInputs of(CatalogueOption catalogue, String... files) {
        List<Path> paths = new ArrayList<>();
        for (String file : files) {
            try {
                if (file != null && !file.equals(InputFiles.STANDARD_INPUT)) {
                    paths.add(Path.of(file));
                }
            } catch (InvalidPathException noName) {
                // Reading it tells what is wrong with it; nothing can be written over it.
                continue;
            }
        }
        return new KeptInputs(catalogue.folders(), paths);
    }

    /** The same with another folder that is read. */
    KeptInputs and(Path folder) {
        List<Path> all = new ArrayList<>(folders);
        if (folder != null) {
            all.add(folder);
        }
        return new KeptInputs(all, files);
    }

    /**
     * Refuses a place for output that holds what is read.
     *
     * @param target the place; null for standard output
     */
    void refuse(Path target) throws NotWritten {
        if (target == null || !Files.exists(target, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        for (Path file : files) {
            refuse(target, same(target, file));
        }
        Path parent = target.toAbsolutePath().getParent();
        for (Path folder : folders) {
            refuse(target, parent != null && same(parent, folder));
        }
    }

    /** Refuses a folder whose files would be replaced, and that holds what is read. */
    void refuseFolder(Path target) throws NotWritten {
        if (!Files.isDirectory(target)) {
            return;
        }
        Set<Path> read = new LinkedHashSet<>(folders);
        files.forEach(file -> read.add(file.toAbsolutePath().getParent()));
        for (Path folder : read) {
            refuse(target, same(target, folder));
        }
    }

    private static void refuse(Path target, boolean read) throws NotWritten {
        if (read) {
            throw new NotWritten(
                    target + ": found what this command reads, expected another place; choose one");
        }
    }

    private static boolean same(Path one, Path other) {
        try {
            return Files.isSameFile(one, other);
        } catch (IOException absent) {
            return false;
        }
    }
}
