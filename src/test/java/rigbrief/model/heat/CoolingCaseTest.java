package rigbrief.model.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.model.Refused.refused;

import org.junit.jupiter.api.Test;
import rigbrief.model.heat.CoolingCase.Air;
import rigbrief.model.heat.CoolingCase.Card;
import rigbrief.model.heat.CoolingCase.Processor;
import rigbrief.model.heat.CoolingCase.Seat;

class CoolingCaseTest {
    private static final double NAN = Double.NaN;

    @Test
    void air_that_makes_no_sense_is_refused() {
        refused("roomC", () -> new Air(NAN, 1.2, 100, 50, 25));
        refused("densityKgM3", () -> new Air(22, 0, 100, 50, 25));
        refused("heatW", () -> new Air(22, 1.2, -100, 50, 25));
        refused("fullFlowM3h", () -> new Air(22, 1.2, 100, -50, 25));
        refused("fansFullDba", () -> new Air(22, 1.2, 100, 50, NAN));
    }

    @Test
    void a_processor_that_makes_no_sense_is_refused() {
        refused("powerW", () -> new Processor(-1, 95, 0.2, 30));
        refused("limitC", () -> new Processor(1, NAN, 0.2, 30));
        refused("coolerFullKw", () -> new Processor(1, 95, -0.2, 30));
        refused("coolerFullDba", () -> new Processor(1, 95, 0.2, NAN));
    }

    @Test
    void a_card_that_makes_no_sense_is_refused() {
        refused("powerW", () -> new Card(-1, 85, 0.2, 36, 20));
        refused("limitC", () -> new Card(1, NAN, 0.2, 36, 20));
        refused("referenceKw", () -> new Card(1, 85, -0.2, 36, 20));
        refused("loadDba", () -> new Card(1, 85, 0.2, NAN, 20));
        refused("idleDba", () -> new Card(1, 85, 0.2, 36, NAN));
    }

    @Test
    void a_seat_that_makes_no_sense_is_refused() {
        refused("dampingDb", () -> new Seat(NAN, 1, 20));
        refused("distanceM", () -> new Seat(3, 0, 20));
        refused("floorDba", () -> new Seat(3, 1, NAN));
    }

    @Test
    void constant_sources_and_margin_are_checked_too() {
        var air = new Air(22, 1.2, 100, 50, 25);
        var processor = new Processor(65, 95, 0.2, 30);
        var seat = new Seat(0, 1, 20);

        refused("constantDba", () -> new CoolingCase(air, processor, Card.NONE, NAN, seat, 5));
        refused("marginK", () -> new CoolingCase(air, processor, Card.NONE, 20, seat, -5));
    }

    @Test
    void without_a_card_there_is_no_heat_and_no_sound() {
        assertThat(Card.NONE.powerW()).isZero();
        assertThat(Card.NONE.loadDba()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(Card.NONE.idleDba()).isEqualTo(Double.NEGATIVE_INFINITY);
    }
}
