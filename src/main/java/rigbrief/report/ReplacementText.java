package rigbrief.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.audit.AuditFinding;
import rigbrief.build.BuildLine;
import rigbrief.build.PartState;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.proposal.replace.Change;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Way;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;

/** A replacement in plain text, 80 columns wide. */
public final class ReplacementText implements Report<ReplacementAnswer> {
    private static final ReportInfo INFO =
            ReportInfo.text("replacement-text", "a replacement for people");
    private static final int SLOT_COLUMNS = 12;
    private static final int PART_COLUMNS = 40;
    private static final int SUPPLIER_COLUMNS = 16;
    private static final int WAY_COLUMNS = 19;

    @Override
    public ReportInfo info() {
        return INFO;
    }

    @Override
    public String write(ReplacementAnswer answer, Style style) {
        TextPage page = new TextPage(style);
        new Writing(page, answer).document();
        return page.toString();
    }

    private static final class Writing {
        private final TextPage page;
        private final ReplacementAnswer answer;
        private final Replacement it;
        private final AssessmentText assessment;

        Writing(TextPage page, ReplacementAnswer answer) {
            this.page = page;
            this.answer = answer;
            this.it = answer.replacement();
            this.assessment = new AssessmentText(page, it.brief(), it.catalogue());
        }

        void document() {
            page.paragraph(
                    0,
                    "Build \"%s\" for %s: %s."
                            .formatted(answer.name(), it.brief().client(), outcome()));
            page.paragraph(
                    0,
                    "Catalogue \"%s\" of %s. Ceiling %s all in."
                            .formatted(
                                    it.catalogue().name(),
                                    it.catalogue().asOf(),
                                    it.brief().ceiling()));
            it.why().forEach(words -> page.blank().paragraph(0, words));
            if (it.nothingToDo() && it.ways().size() == 1) {
                stays(it.ways().get(0));
                money(it.ways().get(0));
            } else {
                for (Way way : it.ways()) {
                    way(way, it.ways().get(0));
                }
            }
            if (it.ways().size() > 1) {
                page.blank().chapter("SIDE BY SIDE", "");
                page.table(comparison());
            }
            remarks();
            page.blank();
        }

        private String outcome() {
            if (it.impossible()) {
                return it.proven() ? "there is no replacement" : "no replacement was found";
            }
            return it.nothingToDo() ? "it can stay as it is" : ways();
        }

        private String ways() {
            return Counted.of(it.ways().size(), "way") + " out";
        }

        private void way(Way way, Way first) {
            page.blank()
                    .chapter(
                            way.aim().word().toUpperCase(Locale.ROOT),
                            signedMoney(way.extraMinor()));
            page.paragraph(0, way.aim().meaning());
            changes(way);
            stays(way);
            money(way);
            needs(way, first);
            assessment.findings("New cautions", way.newCautions(), AuditFinding.Level.CAUTION);
            work(way, first);
            page.section("Proof").paragraph(2, way.proof());
        }

        private void changes(Way way) {
            page.section("Changes");
            if (way.changes().isEmpty()) {
                page.paragraph(2, "None.");
                return;
            }
            TextTable table =
                    new TextTable()
                            .left("slot", SLOT_COLUMNS)
                            .left("new part", PART_COLUMNS)
                            .left("supplier", SUPPLIER_COLUMNS)
                            .right("extra");
            for (Change change : way.changes()) {
                table.remarked(
                        sentence(change, way),
                        change.slot().word(),
                        change.to().map(part -> pieces(change.toPieces(), part)).orElse("none"),
                        supplier(way, change),
                        signed(change.extraMinor()));
            }
            page.table(table);
        }

        private String sentence(Change change, Way way) {
            String from =
                    change.from().isEmpty() || change.sameAgain()
                            ? ""
                            : "Instead of "
                                    + pieces(change.fromPieces(), change.from().get())
                                    + ". ";
            String because = change.because();
            String why = because.substring(0, 1).toUpperCase(Locale.ROOT) + because.substring(1);
            return from + why + ".";
        }

        private static String pieces(int pieces, Part part) {
            return (pieces > 1 ? pieces + " x " : "") + part.name();
        }

        private String supplier(Way way, Change change) {
            if (change.units() == 0) {
                return "";
            }
            return way.record()
                    .line(change.slot())
                    .flatMap(BuildLine::supplier)
                    .map(this::supplierName)
                    .orElse("");
        }

        private String supplierName(String id) {
            return it.catalogue().suppliers().stream()
                    .filter(supplier -> supplier.id().equals(id))
                    .map(Supplier::name)
                    .findFirst()
                    .orElse(id);
        }

        private void stays(Way way) {
            List<String> slots = new ArrayList<>();
            for (BuildLine line : way.record().lines()) {
                if (way.changes().stream().noneMatch(change -> change.slot() == line.slot())) {
                    String state =
                            line.kept()
                                    ? " (the client's own)"
                                    : line.state() == PartState.WANTED
                                            ? ""
                                            : " (" + line.state().word() + ")";
                    slots.add(line.slot().word() + state);
                }
            }
            if (!slots.isEmpty()) {
                page.blank().hanging("  Stays: ", String.join(", ", slots) + ".");
            }
            List<String> otherwise = boughtOtherwise(way);
            if (!otherwise.isEmpty()) {
                page.hanging("  Bought otherwise: ", String.join("; ", otherwise) + ".");
            }
        }

        /** What stays and is not ordered yet may be bought from another supplier than planned. */
        private List<String> boughtOtherwise(Way way) {
            List<String> words = new ArrayList<>();
            for (BuildLine line : way.record().lines()) {
                it.filed()
                        .line(line.slot())
                        .filter(before -> before.part().id().equals(line.part().id()))
                        .filter(before -> !where(before).equals(where(line)))
                        .ifPresent(
                                before ->
                                        words.add(
                                                "%s %s instead of %s"
                                                        .formatted(
                                                                line.slot().word(),
                                                                where(line),
                                                                where(before))));
            }
            return words;
        }

        private String where(BuildLine line) {
            String price = "at " + line.unitPrice().grouped();
            return line.supplier().map(id -> price + " from " + supplierName(id)).orElse(price);
        }

        private void money(Way way) {
            page.section("Money and time");
            List<String> terms = new ArrayList<>();
            long parts = 0;
            for (Change change : way.changes()) {
                parts += change.extraMinor();
            }
            term(terms, "changed parts", parts);
            term(terms, "today's prices of what stays", way.stayingMinor());
            term(terms, "delivery", way.deliveryMinor());
            term(terms, "tax", way.extraMinor() - parts - way.stayingMinor() - way.deliveryMinor());
            page.hanging(
                    "  ",
                    "Extra: %s. All in %s of %s."
                            .formatted(
                                    terms.size() < 2
                                            ? terms.stream().findFirst().orElse("none")
                                            : String.join(", ", terms)
                                                    + " = "
                                                    + signed(way.extraMinor()),
                                    money(way.audit().cost().totalMinor()),
                                    it.brief().ceiling()));
            if (way.refundMinor() != 0 || way.lostMinor() != 0) {
                page.hanging(
                        "  ",
                        "To come back from suppliers: %s%s."
                                .formatted(
                                        money(way.refundMinor()),
                                        way.lostMinor() == 0
                                                ? ""
                                                : "; lost to restocking and postage: "
                                                        + money(way.lostMinor())));
            }
            page.hanging("  ", time(way));
        }

        private String time(Way way) {
            return way.longestLeadDays() == 0
                    ? "Nothing is left to wait for."
                    : "All here within %s, by %s when ordered on the catalogue's date."
                            .formatted(Counted.of(way.longestLeadDays(), "day"), way.here());
        }

        private void term(List<String> terms, String name, long minor) {
            if (minor != 0) {
                terms.add(name + " " + signed(minor));
            }
        }

        /** Said once where it is the same for all ways. */
        private void needs(Way way, Way first) {
            List<NeedLine> needs = NeedLine.of(it.brief(), way.audit());
            if (way != first && needs.equals(NeedLine.of(it.brief(), first.audit()))) {
                if (!needs.isEmpty()) {
                    page.section("Needs").paragraph(2, "As with the least change.");
                }
            } else {
                assessment.needs(way.audit());
            }
        }

        private void work(Way way, Way first) {
            if (way.work().isEmpty()) {
                return;
            }
            page.section(
                    way.workMinutes() == 0
                            ? "At the bench"
                            : "At the bench, about " + Counted.of(way.workMinutes(), "minute"));
            if (way != first && way.work().equals(first.work())) {
                page.paragraph(2, "As with the least change.");
                return;
            }
            if (way.work().size() == 1) {
                page.paragraph(2, way.work().get(0));
                return;
            }
            int number = 1;
            for (String step : way.work()) {
                page.hanging("  %2d. ".formatted(number++), step);
            }
        }

        private TextTable comparison() {
            TextTable table = new TextTable().left("", SLOT_COLUMNS);
            it.ways().forEach(way -> table.left(way.aim().word(), WAY_COLUMNS));
            row(table, "extra", way -> signed(way.extraMinor()));
            row(table, "to come back", way -> amount(way.refundMinor()));
            row(table, "utility", way -> GoalShare.utility(way.audit()).toPlainString());
            row(table, "all here by", way -> way.here().toString());
            for (Slot slot : Slot.values()) {
                if (it.ways().stream().anyMatch(way -> changed(way, slot))) {
                    row(table, slot.word(), way -> changed(way, slot) ? part(way, slot) : "stays");
                }
            }
            return table;
        }

        private void row(
                TextTable table, String head, java.util.function.Function<Way, String> cell) {
            List<String> cells = new ArrayList<>();
            cells.add(head);
            it.ways().forEach(way -> cells.add(cell.apply(way)));
            table.row(cells.toArray(String[]::new));
        }

        private static boolean changed(Way way, Slot slot) {
            return way.changes().stream().anyMatch(change -> change.slot() == slot);
        }

        private static String part(Way way, Slot slot) {
            return way.audit().build().has(slot)
                    ? pieces(way.audit().build().pieces(slot), way.audit().build().part(slot))
                    : "none";
        }

        private void remarks() {
            List<String> remarks = new ArrayList<>(it.remarks());
            if (it.ways().stream().anyMatch(way -> way.lostMinor() > 0)) {
                remarks.add(
                        "Assumed, as common practice: %d %% restocking and the builder's own postage for sound parts that go back; faulty ones are refunded in full."
                                .formatted(it.disturbance().restockingPercent()));
            }
            if (!remarks.isEmpty()) {
                page.section("Remarks");
            }
            remarks.forEach(remark -> page.hanging("  - ", remark));
        }

        private String money(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).toString();
        }

        private String amount(long minor) {
            return Money.ofMinor(minor, it.brief().currency()).grouped();
        }

        private String signedMoney(long minor) {
            return it.brief().currency().getCurrencyCode() + " " + signed(minor);
        }

        private String signed(long minor) {
            return (minor > 0 ? "+" : "") + amount(minor);
        }
    }
}
