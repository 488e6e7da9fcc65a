package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OrderTextTest {

    @Test
    void a_busy_order_reads_as_it_did() {
        Keep.assertKept("order.txt", new OrderText().write(OrderAnswers.busy(), Style.PLAIN));
    }

    /**
     * Hand calculation. Planned: four boards at 100.00 and four fans at 9.00. Wanted still: a board
     * and the fans. Owed: the board on its way. Paid: three boards at 98.00 and the old one at
     * 90.00. To come back: the returned board and the old one.
     */
    @Test
    void the_money_adds_up() {
        var money = OrderAnswers.busy().status().money();

        assertThat(money.planned().plain()).isEqualTo("436.00");
        assertThat(money.toSpend().plain()).isEqualTo("136.00");
        assertThat(money.owed().plain()).isEqualTo("100.00");
        assertThat(money.paid().plain()).isEqualTo("384.00");
        assertThat(money.refunded().plain()).isEqualTo("0.00");
        assertThat(money.toComeBack().plain()).isEqualTo("188.00");
    }

    @Test
    void no_line_is_wider_than_the_page() {
        assertThat(new OrderText().write(OrderAnswers.busy(), Style.PLAIN).lines())
                .allMatch(line -> line.length() <= 80);
    }
}
