package rigbrief.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SourceTest {
    @Test
    void a_standard_names_title_edition_and_section() {
        assertThat(Source.standard("Title", "2020", "table 1").text())
                .isEqualTo("Title, 2020, table 1");
    }

    @Test
    void other_sources_say_what_they_are() {
        assertThat(Source.makersSheet("height").text()).isEqualTo("maker's sheet: height");
        assertThat(Source.commonPractice("because").text()).isEqualTo("common practice: because");
        assertThat(Source.brief("noise").text()).isEqualTo("the brief: noise");
    }
}
