package rigbrief.intake;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.file.BriefReader;
import rigbrief.fixture.CatalogueFixture;

class BlankBriefTest {

    @Test
    void a_brief_before_the_first_answer_is_what_the_reader_makes_of_a_brief_that_says_nothing()
            throws BadInput {
        Catalogue catalogue = CatalogueFixture.aCatalogue().make();
        String text = "client: somebody\ncurrency: EUR\nceiling: 0.01\n";

        Brief read =
                BriefReader.read(
                        new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                        "-",
                        catalogue);

        assertThat(BlankBrief.named("blank", catalogue.currency()))
                .isEqualTo(new BriefDraft(read).name("blank").toBrief());
    }
}
