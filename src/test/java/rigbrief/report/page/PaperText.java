package rigbrief.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import rigbrief.proposal.Proposals;
import rigbrief.report.ProposalsJson;
import rigbrief.report.Style;

/** The text of a document, held against the JSON of the same answer. */
final class PaperText {
    private final String text;

    private PaperText(String text) {
        this.text = text;
    }

    /** Lines and pages break anywhere, so only letters, figures and signs count. */
    static PaperText of(String text) {
        return new PaperText(squeezed(text));
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0\\u202f]+", "");
    }

    /** Whether it has these words, broken anyhow. */
    boolean contains(String words) {
        return text.contains(squeezed(words));
    }

    /** Every part by name, every price and every total, to the cent, in English figures. */
    void holdsAll(Proposals answer) throws IOException {
        JsonNode json = new ObjectMapper().readTree(new ProposalsJson().write(answer, Style.PLAIN));
        for (JsonNode proposal : json.get("proposals")) {
            for (JsonNode part : proposal.get("parts")) {
                holds(part.get("name").asText());
                holds(english(part.get("unit-price").asText()));
            }
            for (String sum : new String[] {"parts", "delivery", "total"}) {
                holds(english(proposal.at("/cost/" + sum).asText()));
            }
        }
    }

    private void holds(String words) {
        assertThat(text).contains(squeezed(words));
    }

    /** 1234.50 as 1,234.50: grouped by three, by hand. */
    private static String english(String plain) {
        int point = plain.indexOf('.');
        StringBuilder grouped = new StringBuilder(plain);
        for (int i = point - 3; i > 0; i -= 3) {
            grouped.insert(i, ',');
        }
        return grouped.toString();
    }
}
