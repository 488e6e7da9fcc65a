package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.QUAY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.build.PartState;
import rigbrief.catalogue.Catalogue;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Filed;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Replacer;
import rigbrief.proposal.replace.Trouble;

class ReplacementJsonTest {
    private static final Contract CONTRACT = Contract.of("replacement");
    private static final Build BUILD = aBuild().make();
    private static final String BOARD = BUILD.board().id();

    static ReplacementAnswer answer(PartState state, Trouble trouble) {
        Brief brief = Answers.brief().make();
        Catalogue catalogue =
                Answers.catalogue()
                        .part(aBoard().id("other-board"))
                        .offer("other-board", QUAY, "112.00")
                        .make();
        BuildRecord record = Filed.of(BUILD).all(state).record(brief, catalogue);
        Replacement replacement =
                new Replacer(Limits.usual(), Disturbance.usual(brief.currency()))
                        .replace(record, trouble, catalogue);
        return new ReplacementAnswer("potter.build.yaml", replacement);
    }

    static Trouble boardGone() {
        return Trouble.without(BOARD);
    }

    static Trouble boardFaulty() {
        return new Trouble(List.of(), List.of(BOARD), Map.of());
    }

    /** Nothing else has a processor's place. */
    static Trouble processorGone() {
        return Trouble.without(BUILD.processor().id());
    }

    @Test
    void a_replacement_keeps_the_contract() throws IOException {
        String json = json(answer(PartState.WANTED, boardGone()));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("result").asText()).isEqualTo("replaced");
        assertThat(read(json).at("/changed/0/to").asText()).isEqualTo("other-board");
        assertThat(read(json).at("/changed/0/extra").textValue()).isEqualTo("12.00");
        assertThat(read(json).at("/proposal/parts")).hasSize(8);
    }

    @Test
    void an_exchange_names_the_same_part_twice_and_keeps_the_rest() throws IOException {
        JsonNode json = read(json(answer(PartState.FITTED, boardFaulty())));

        assertThat(CONTRACT.broken(json.toString())).isEmpty();
        assertThat(json.at("/changed/0/to")).isEqualTo(json.at("/changed/0/from"));
        assertThat(json.get("refund").textValue()).isEqualTo("100.00");
        assertThat(json.get("kept")).hasSize(7);
        assertThat(json.at("/kept/0/state").asText()).isEqualTo("fitted");
    }

    @Test
    void the_parts_of_the_extra_add_up() throws IOException {
        JsonNode json = read(json(answer(PartState.FITTED, boardFaulty())));

        BigDecimal sum = BigDecimal.ZERO;
        for (JsonNode part : json.get("extra-of")) {
            sum = sum.add(new BigDecimal(part.textValue()));
        }
        assertThat(sum).isEqualByComparingTo(json.get("extra").textValue());
    }

    @Test
    void no_way_out_keeps_the_contract_too() throws IOException {
        String json = json(answer(PartState.WANTED, processorGone()));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("result").asText()).isEqualTo("impossible");
        assertThat(read(json).get("why")).isNotEmpty();
        assertThat(read(json).get("proposal").isNull()).isTrue();
    }

    @Test
    void a_build_that_can_stay_keeps_the_contract_too() throws IOException {
        String json = json(answer(PartState.WANTED, Trouble.NONE));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("result").asText()).isEqualTo("unchanged");
        assertThat(read(json).get("others")).isEmpty();
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(ReplacementAnswer answer) {
        return new ReplacementJson().write(answer, Style.PLAIN);
    }
}
