package rigbrief.report;

import static org.assertj.core.api.Assertions.assertThat;
import static rigbrief.fixture.BuildFixture.aBuild;
import static rigbrief.fixture.DisplayFixture.aDisplay;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.catalogue.Catalogue;
import rigbrief.measurement.tune.HeldScenes;
import rigbrief.measurement.tune.TuneTerms;
import rigbrief.measurement.tune.Tuner;

class TuningJsonTest {
    private static final Contract CONTRACT = Contract.of("tuning");

    static TuningAnswer answer(Build build, TuneTerms terms) {
        Brief brief = Answers.brief().make();
        Catalogue catalogue = Answers.catalogue().make();
        return new TuningAnswer(
                "potter.build.yaml", catalogue, Tuner.tune(brief, catalogue, build, terms));
    }

    @Test
    void settings_for_the_usual_terms_keep_the_contract() throws IOException {
        String json = json(answer(aBuild().make(), TuneTerms.USUAL));

        assertThat(CONTRACT.broken(json)).isEmpty();
        JsonNode title = read(json).at("/titles/0");
        assertThat(title.get("use").asText()).isEqualTo("lantern-marsh");
        assertThat(title.get("outcome").asText()).isEqualTo("held");
        assertThat(read(json).at("/held-in/rule").asText()).isEqualTo("all-but-worst");
    }

    @Test
    void settings_for_a_screen_of_the_build_and_a_share_keep_the_contract() throws IOException {
        TuneTerms terms =
                new TuneTerms(
                        OptionalInt.of(900),
                        new HeldScenes(OptionalInt.of(90)),
                        OptionalInt.empty());

        String json = json(answer(aBuild().with(aDisplay()).make(), terms));

        assertThat(CONTRACT.broken(json)).isEmpty();
        assertThat(read(json).at("/screen/variable-from-hz").asInt()).isEqualTo(48);
        assertThat(read(json).at("/held-in/share-percent").asInt()).isEqualTo(90);
        assertThat(read(json).at("/titles/0/outcome").asText()).isEqualTo("lower-target");
    }

    private static JsonNode read(String json) throws IOException {
        return new ObjectMapper().readTree(json);
    }

    private static String json(TuningAnswer answer) {
        return new TuningJson().write(answer, Style.PLAIN);
    }
}
