package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.assembly.AssemblyPlan;
import rigbrief.report.page.DocumentSubject;
import rigbrief.wording.Texts;

class AssemblyTextTest {
    static List<DocumentSubject> subjects() {
        return Subjects.all();
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void all_of_the_plan_is_on_paper_and_defers_to_manuals_and_codes(DocumentSubject subject) {
        AssemblyPlan plan = AssemblyPlan.of(subject.bench(Texts.ENGLISH));

        String text = new AssemblyText().write(subject, Style.PLAIN);

        assertThat(Subjects.narrow(text)).isTrue();
        String flat = Subjects.flat(text);
        plan.steps()
                .forEach(
                        step -> {
                            assertThat(flat).contains(step.title());
                            step.actions().forEach(action -> assertThat(flat).contains(action));
                        });
        plan.cautions().forEach(caution -> assertThat(flat).contains(caution.text()));
        assertThat(flat)
                .contains("makers' manuals and local electrical codes go before them")
                .contains("First boot", "Tests before handover", "Connections", "Fans and air");
        assertThat(text.lines().filter(line -> line.contains("[ ]")).count())
                .isGreaterThanOrEqualTo(
                        plan.steps().size()
                                + plan.tools().size()
                                + plan.connections().size()
                                + plan.firstBoot().size()
                                + plan.tests().size());
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void the_drawing_shows_every_fan_once(DocumentSubject subject) {
        var fans = AssemblyPlan.of(subject.bench(Texts.ENGLISH)).fans();

        String drawing = String.join("\n", FanDrawingText.lines(fans));

        for (var group : fans.fans()) {
            char letter = FanDrawingText.letter(fans, group).charAt(0);
            long drawn = drawing.chars().filter(c -> c == letter).count();
            assertThat(drawn).as("%s in%n%s", letter, drawing).isEqualTo(group.count());
        }
    }
}
