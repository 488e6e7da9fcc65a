package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import rigbrief.part.Slot;
import rigbrief.quantity.Money;
import rigbrief.report.page.DocumentSubject;

class OrderListTextTest {
    static List<DocumentSubject> subjects() {
        return Subjects.all();
    }

    @ParameterizedTest
    @MethodSource("subjects")
    void every_part_its_price_and_the_total_are_on_it(DocumentSubject subject) {
        String text = new OrderListText().write(subject, Style.PLAIN);

        assertThat(Subjects.narrow(text)).isTrue();
        for (var cost : subject.audit().cost().lines()) {
            var part = subject.filed().build().part(cost.slot());
            String price = Money.ofMinor(cost.unitMinor(), subject.brief().currency()).grouped();
            assertThat(text).as(part.id()).contains(part.listing().makerNumber()).contains(price);
        }
        Money total =
                Money.ofMinor(subject.audit().cost().totalMinor(), subject.brief().currency());
        assertThat(text).containsPattern("all in +" + total.grouped().replace(".", "[.]"));
        boolean licence = subject.filed().build().has(Slot.SYSTEM);
        assertThat(Subjects.flat(text).contains("operating system: licence")).isEqualTo(!licence);
    }
}
