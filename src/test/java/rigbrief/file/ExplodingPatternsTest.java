package rigbrief.file;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.file.FolderFixture.aFolder;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import rigbrief.diagnostic.Fault;
import rigbrief.diagnostic.Faults;
import rigbrief.part.Kind;

/**
 * Long texts that make a pattern with nested or doubled repetition run forever, or recurse until
 * the stack is gone, do neither in any column of any kind.
 */
class ExplodingPatternsTest {
    /** The longest cell that is read at all. */
    private static final int LONGEST = 10_000;

    private static final List<String> EXPLOSIVE =
            List.of(
                    filled("", "a", "!"),
                    filled("", "0", "!"),
                    filled("", "9", ""),
                    filled("a", " ", "!"),
                    filled("", " x", "!"),
                    filled("", "a.", "!"),
                    filled("1", ".1", ""),
                    filled("heron@1", ".1", ""),
                    filled("2280:a", "|a", ""),
                    filled("2280:a", "|a", "!"),
                    filled("front:120", "|120", "@30"),
                    filled("front:1x120", "|1x120", ""),
                    filled("m2-1 takes sata-1", ",sata-1", ""),
                    filled("m2-1 takes sata-1", ",sata-1", "!"),
                    filled("ddr4@3200", ";ddr4@3200", ""),
                    filled("dp1.4:1", ";dp1.4:1", "!"),
                    filled("2:6000", ";2:6000", ""),
                    filled("", "-", ""),
                    filled("", ";", ""),
                    filled("", "\u0301", "e"),
                    filled("", "(a+", ")"));

    private static String filled(String head, String middle, String tail) {
        int times = (LONGEST - head.length() - tail.length()) / middle.length();
        return head + middle.repeat(times) + tail;
    }

    @ParameterizedTest
    @EnumSource(Kind.class)
    void every_column_reads_or_refuses_them(Kind kind) {
        String[] lines = aFolder().text(kind.fileName()).split("\n");
        List<String> cells = cells(lines[1]);
        for (int i = 0; i < cells.size(); i++) {
            for (String explosive : EXPLOSIVE) {
                List<String> spoilt = new ArrayList<>(cells);
                spoilt.set(i, '"' + explosive + '"');
                Faults faults = new Faults();

                new KindFile(faults)
                        .read(
                                kind,
                                new SourceText(
                                        "f",
                                        lines[0] + "\n" + String.join(",", spoilt) + "\n",
                                        ""));

                assertThat(faults.all()).extracting(Fault::line).allMatch(line -> line == 2);
            }
        }
    }

    /** Cells of a line of the fixture; commas inside quotes do not part them. */
    private static List<String> cells(String line) {
        return Arrays.asList(line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1));
    }
}
