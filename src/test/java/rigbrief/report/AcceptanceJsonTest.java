package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import rigbrief.measurement.accept.Acceptor;
import rigbrief.measurement.accept.LineUnit;
import rigbrief.measurement.accept.Reading;
import rigbrief.measurement.accept.SheetLine;

class AcceptanceJsonTest {
    private static final Contract CONTRACT = Contract.of("acceptance");

    /** Everything as expected but speeds, which come to a share of it. */
    static AcceptanceAnswer answer(double speed) {
        Acceptor acceptor = SheetJsonTest.acceptor();
        List<Reading> readings = new ArrayList<>();
        for (SheetLine line : acceptor.sheet().lines()) {
            double middle = line.middle().orElse(1);
            boolean rate = line.unit() == LineUnit.FPS;
            readings.add(new Reading(line.id(), rate ? middle * speed : middle));
        }
        return new AcceptanceAnswer(
                "potter.build.yaml",
                Answers.catalogue().make(),
                acceptor.judge(readings, List.of()));
    }

    static AcceptanceAnswer unmeasured() {
        return new AcceptanceAnswer(
                "potter.build.yaml",
                Answers.catalogue().make(),
                SheetJsonTest.acceptor().judge(List.of(), List.of()));
    }

    @Test
    void a_kept_promise_keeps_the_contract() throws IOException {
        String json = json(answer(1));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("verdict").asText()).isEqualTo("kept");
        assertThat(read(json).get("causes")).isEmpty();
    }

    @Test
    void a_broken_promise_keeps_the_contract_and_names_causes() throws IOException {
        String json = json(answer(0.4));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("verdict").asText()).isEqualTo("broken");
        assertThat(read(json).get("causes")).isNotEmpty();
    }

    @Test
    void a_test_in_which_nothing_was_measured_keeps_the_contract() {
        assertThat(CONTRACT.broken(json(unmeasured()))).isEmpty();
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(AcceptanceAnswer answer) {
        return new AcceptanceJson().write(answer, Style.PLAIN);
    }
}
