package rigbrief.model.power;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DesignGuideTest {

    /** Source: the excursion table came with version 3 of the ATX guide, document 336521. */
    @ParameterizedTest
    @CsvSource({"atx2,ATX2,false", "atx3.0,ATX3_0,true", "atx3.1,ATX3_1,true"})
    void only_version_three_has_an_excursion_table(String id, DesignGuide guide, boolean allows) {
        assertThat(DesignGuide.find(id)).contains(guide);
        assertThat(guide.id()).isEqualTo(id);
        assertThat(guide.allowsExcursions()).isEqualTo(allows);
    }

    @Test
    void an_unknown_guide_is_not_found() {
        assertThat(DesignGuide.find("atx4")).isEmpty();
    }
}
