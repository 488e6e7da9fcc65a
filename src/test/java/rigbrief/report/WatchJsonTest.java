package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BoardFixture.aBoard;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.CatalogueFixture.KESTREL;
import static rigbrief.fixture.CatalogueFixture.QUAY;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.fixture.CatalogueFixture;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Filed;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.StockWatch;

class WatchJsonTest {
    private static final Contract CONTRACT = Contract.of("watch");
    private static final Build BUILD = aBuild().make();
    private static final String BOARD = BUILD.board().id();

    /** Little stock, and another board that costs 12.00 more. */
    static WatchAnswer scarce() {
        return answer(
                Answers.catalogue()
                        .noOffer(BOARD)
                        .offer(BOARD, KESTREL, "100.00", 2, 12)
                        .part(aBoard().id("other-board"))
                        .offer("other-board", QUAY, "112.00"));
    }

    /** The board is gone; another costs 12.00 more. */
    static WatchAnswer gone() {
        return answer(
                Answers.catalogue()
                        .noOffer(BOARD)
                        .part(aBoard().id("other-board"))
                        .offer("other-board", QUAY, "112.00"));
    }

    /** The board is gone, and there is no other. */
    static WatchAnswer hopeless() {
        return answer(Answers.catalogue().noOffer(BOARD));
    }

    private static WatchAnswer answer(CatalogueFixture today) {
        Brief brief = Answers.brief().make();
        Catalogue newer = today.make();
        return new WatchAnswer(
                "potter.build.yaml",
                new StockWatch(Limits.usual(), Disturbance.usual(brief.currency()))
                        .watch(Filed.of(BUILD).record(brief, Answers.catalogue().make()), newer));
    }

    @Test
    void a_build_that_stands_keeps_the_contract() throws IOException {
        String json = json(scarce());

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).get("result").asText()).isEqualTo("stands");
        JsonNode board = read(json).at("/parts/1");
        assertThat(board.get("slot").asText()).isEqualTo("board");
        assertThat(board.at("/fallback/extra").textValue()).isEqualTo("12.00");
        assertThat(board.at("/fallback/nothing-else-changes").asBoolean()).isTrue();
        assertThat(board.get("risks"))
                .extracting(JsonNode::asText)
                .containsExactly("low stock", "single offer", "long lead");
    }

    @Test
    void a_build_that_has_to_change_or_fails_keeps_the_contract() throws IOException {
        assertThat(CONTRACT.broken(json(gone()))).isEmpty();
        assertThat(read(json(gone())).get("result").asText()).isEqualTo("has-to-change");
        assertThat(CONTRACT.broken(json(hopeless()))).isEmpty();
        assertThat(read(json(hopeless())).get("result").asText()).isEqualTo("impossible");
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(WatchAnswer answer) {
        return new WatchJson().write(answer, Style.PLAIN);
    }
}
