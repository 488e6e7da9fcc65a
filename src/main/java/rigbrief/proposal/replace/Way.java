package rigbrief.proposal.replace;

import java.time.LocalDate;
import java.util.List;
import rigbrief.audit.Audit;
import rigbrief.audit.AuditFinding;
import rigbrief.build.BuildRecord;

/**
 * One way out of the trouble.
 *
 * @param aim what it was chosen for
 * @param record the new build as it is filed: kept parts with their states, new ones wanted, what
 *     was ordered and is not used set aside
 * @param audit everything the judge says of it, with what is paid already counted as paid
 * @param newCautions cautions of the judge that the build as filed did not have
 * @param changes what is filled anew, with the reason
 * @param extraMinor what everything costs more than as filed, all in, in minor units; negative when
 *     it costs less
 * @param deliveryMinor what of that is delivery
 * @param stayingMinor what of that comes from parts that stay and cost another price today
 * @param refundMinor what suppliers pay back, in minor units
 * @param lostMinor what restocking and postage of sound parts eat up, in minor units
 * @param workMinutes work that giving up sound parts makes
 * @param longestLeadDays days until the last part that is still to be bought is here
 * @param here when that is, ordered on the catalogue's date
 * @param work what is to be done at the bench because of it
 * @param proof what is proven about it
 * @param proven whether it is
 */
public record Way(
        Aim aim,
        BuildRecord record,
        Audit audit,
        List<AuditFinding> newCautions,
        List<Change> changes,
        long extraMinor,
        long deliveryMinor,
        long stayingMinor,
        long refundMinor,
        long lostMinor,
        int workMinutes,
        int longestLeadDays,
        LocalDate here,
        List<String> work,
        String proof,
        boolean proven) {
    public Way {
        newCautions = List.copyOf(newCautions);
        changes = List.copyOf(changes);
        work = List.copyOf(work);
    }

    /** What a way was chosen for. */
    public enum Aim {
        LEAST("least change", "What is here stays, and as little as possible changes."),
        CHEAPEST(
                "cheapest",
                "The least money, if one slot more may change that gives up nothing here."),
        BEST(
                "best",
                "The most utility under the ceiling, if one slot more may change that gives up nothing"
                        + " here.");

        private final String word;
        private final String meaning;

        Aim(String word, String meaning) {
            this.word = word;
            this.meaning = meaning;
        }

        /** Its name. */
        public String word() {
            return word;
        }

        /** What it means, as a sentence. */
        public String meaning() {
            return meaning;
        }
    }

    /** How many slots hold something else than as filed. */
    public long changedSlots() {
        return changes.stream().filter(change -> !change.sameAgain()).count();
    }
}
