package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.accept.Acceptor;

class SheetJsonTest {
    private static final Contract CONTRACT = Contract.of("sheet");

    static Acceptor acceptor() {
        return new Acceptor(Answers.brief().make(), Answers.catalogue().make(), aBuild().make());
    }

    static SheetAnswer answer() {
        Brief brief = Answers.brief().make();
        Catalogue catalogue = Answers.catalogue().make();
        return new SheetAnswer("potter.build.yaml", brief, catalogue, acceptor().sheet());
    }

    @Test
    void a_sheet_keeps_the_contract() throws IOException {
        String json = new SheetJson().write(answer(), Style.PLAIN);

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(new ObjectMapper().readTree(json).get("lines"))
                .hasSize(answer().sheet().lines().size());
    }
}
