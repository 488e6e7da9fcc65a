package rigbrief.intake;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import rigbrief.brief.Brief;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;

/**
 * What is known when a question is put.
 *
 * @param catalogue what can be bought and run
 * @param brief the brief as far as it is answered
 * @param answers the answers so far by question, in the order in which they were asked
 * @param least what the least money is found by
 */
record Sheet(Catalogue catalogue, Brief brief, Map<String, String> answers, LeastMoney least) {
    Sheet {
        answers = Collections.unmodifiableMap(new LinkedHashMap<>(answers));
    }

    /** A draft that starts as the brief so far. */
    BriefDraft draft() {
        return new BriefDraft(brief);
    }

    /** Whether a question was answered in this way. */
    boolean answered(String question, String answer) {
        return answer.equals(answers.get(question));
    }
}
