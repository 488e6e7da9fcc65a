package rigbrief.batch;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rigbrief.api.Rigbrief;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefWriter;
import rigbrief.quantity.Money;

/** Briefs in any number: the scenarios in turn, with another ceiling each. */
public final class ManyBriefs {
    private ManyBriefs() {}

    /**
     * Writes briefs into a folder.
     *
     * @param arguments the folder, and how many
     */
    public static void main(String... arguments) throws IOException, BadInput {
        Rigbrief shop = Rigbrief.open(Path.of("catalog-sample"));
        Path folder = Files.createDirectories(Path.of(arguments[0]));
        for (Brief brief : of(shop, Integer.parseInt(arguments[1]))) {
            Files.writeString(folder.resolve(brief.name() + ".yaml"), BriefWriter.write(brief));
        }
    }

    /** So many briefs of all scenarios. */
    static List<Brief> of(Rigbrief shop, int count) throws IOException, BadInput {
        return of(shop, scenarios(), count);
    }

    /**
     * So many briefs: the scenarios in turn, the ceiling raised by 1 % each time they come again.
     */
    public static List<Brief> of(Rigbrief shop, List<Path> files, int count) throws BadInput {
        List<Brief> scenarios = new ArrayList<>();
        for (Path file : files) {
            scenarios.add(shop.brief(file));
        }
        List<Brief> briefs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Brief scenario = scenarios.get(i % scenarios.size());
            BigDecimal ceiling = scenario.ceiling().amount();
            BigDecimal more =
                    ceiling.movePointLeft(2).multiply(BigDecimal.valueOf(i / scenarios.size()));
            briefs.add(
                    new BriefDraft(scenario)
                            .name("%04d-%s".formatted(i, scenario.name()))
                            .ceiling(
                                    Money.ofMinor(
                                            ceiling.add(more)
                                                    .movePointRight(ceiling.scale())
                                                    .longValue(),
                                            scenario.currency()))
                            .toBrief());
        }
        return briefs;
    }

    private static List<Path> scenarios() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("scenarios"))) {
            return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
    }
}
