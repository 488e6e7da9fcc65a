package rigbrief.report.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Cost;
import rigbrief.audit.Audit;
import rigbrief.audit.AuditFinding;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Supplier;
import rigbrief.part.Slot;
import rigbrief.proposal.Choice;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proof;
import rigbrief.report.PartRow;
import rigbrief.report.page.BuildView.Remark;

/** Makes builds readable: everything a page says of one. */
final class BuildViews {
    private final SheetSet set;
    private final Brief brief;
    private final Words words;
    private final PartWords partWords;
    private final FigureWords figureWords;
    private final Trades trades;
    private final Assessor assessor;
    private final Map<String, String> suppliers;

    BuildViews(SheetSet set, Words words) {
        this.set = set;
        this.brief = set.brief();
        this.words = words;
        this.partWords = new PartWords(words, brief.currency());
        this.figureWords = new FigureWords(brief, words);
        this.trades = new Trades(words);
        this.assessor = new Assessor(brief, set.catalogue());
        this.suppliers =
                set.catalogue().suppliers().stream()
                        .collect(Collectors.toMap(Supplier::id, Supplier::name));
    }

    /** A build of the set, with its needs already told. */
    BuildView of(Sheet sheet, List<NeedView> needs) {
        Audit audit = sheet.audit();
        String tier = sheet.tier().isEmpty() ? "none" : sheet.tier();
        return new BuildView(
                tier,
                tierName(sheet),
                words.has("tier." + tier + ".meaning")
                        ? words.text("tier." + tier + ".meaning")
                        : "",
                caption(),
                money(audit.cost().totalMinor()),
                more(audit),
                needs,
                parts(audit, sheet.reasons(), Optional.empty()),
                sums(audit.cost()),
                figureWords.of(audit),
                given(sheet, needs),
                remarks(audit, AuditFinding.Level.CAUTION),
                remarks(audit, AuditFinding.Level.NOTE),
                remarks(audit, AuditFinding.Level.BREACH),
                proof(sheet),
                delivery(audit.cost()));
    }

    private String caption() {
        String client = brief.client();
        String currency = brief.currency().getCurrencyCode();
        String day = words.date(set.catalogue().asOf());
        return brief.quantity() == 1
                ? words.text("build.caption", client, currency, day)
                : words.text(
                        "build.caption.many",
                        client,
                        currency,
                        day,
                        words.number(0, brief.quantity()));
    }

    /** The name of a build's tier; of the build itself where it has none. */
    String tierName(Sheet sheet) {
        String key = "tier." + (sheet.tier().isEmpty() ? "none" : sheet.tier());
        return words.has(key) ? words.text(key) : sheet.tier();
    }

    /** By how much a build is dearer than the cheapest of the set; empty for that one. */
    private String more(Audit audit) {
        long least = set.sheets().get(0).audit().cost().totalMinor();
        long more = audit.cost().totalMinor() - least;
        if (set.sheets().size() < 2) {
            return "";
        }
        return more > 0 ? words.text("side.more", money(more)) : words.text("side.least");
    }

    /** The parts of a build; those that another build lacks are marked. */
    List<PartLine> parts(Audit audit, List<PartReason> reasons, Optional<Audit> before) {
        Map<Slot, Choice> choices = new HashMap<>();
        reasons.forEach(
                reason -> reason.choice().ifPresent(choice -> choices.put(reason.slot(), choice)));
        Assessment it = assessor.assess(audit.build());
        List<PartLine> lines = new ArrayList<>();
        for (PartRow row : PartRow.of(audit, reasons)) {
            boolean changed =
                    before.isPresent()
                            && !Trades.same(audit.build(), before.get().build(), row.slot());
            Optional<Choice> choice = Optional.ofNullable(choices.get(row.slot()));
            lines.add(line(row, audit, it, choice, changed));
        }
        return lines;
    }

    private PartLine line(
            PartRow row, Audit audit, Assessment it, Optional<Choice> choice, boolean changed) {
        int number = row.pieces() * brief.quantity();
        Optional<Cost.Line> bought = row.bought();
        return new PartLine(
                row.slot().word(),
                words.text("slot." + row.slot().word()),
                row.part().name(),
                audit.figures().isPresent() ? partWords.what(row.slot(), it) : "",
                partWords.choice(choice),
                supplier(row),
                bought.map(line -> amount(line.unitMinor())).orElse("–"),
                words.number(0, number),
                bought.map(line -> amount(line.unitMinor() * number)).orElse("–"),
                changed);
    }

    private String supplier(PartRow row) {
        return row.bought()
                .map(line -> suppliers.getOrDefault(line.supplier(), line.supplier()))
                .orElseGet(() -> words.text(row.kept() ? "supplier.own" : "supplier.none"));
    }

    private List<List<String>> sums(Cost cost) {
        List<List<String>> sums = new ArrayList<>();
        sums.add(List.of(words.text("sum.parts"), amount(cost.partsMinor())));
        sums.add(List.of(words.text("sum.delivery"), amount(cost.deliveryMinor())));
        if (cost.feesMinor() != 0) {
            sums.add(List.of(words.text("sum.fees"), amount(cost.feesMinor())));
        }
        if (cost.taxMinor() != 0) {
            sums.add(List.of(words.text("sum.tax"), amount(cost.taxMinor())));
        }
        sums.add(List.of(words.text("sum.total"), money(cost.totalMinor())));
        return sums;
    }

    private String delivery(Cost cost) {
        return cost.lines().isEmpty()
                ? ""
                : words.text("build.delivery", cost.suppliers(), cost.longestLeadDays());
    }

    private List<String> given(Sheet sheet, List<NeedView> needs) {
        List<String> given = new ArrayList<>(missedWishes(sheet.audit(), needs));
        int at = set.sheets().indexOf(sheet);
        if (at + 1 < set.sheets().size()) {
            given.addAll(against(sheet, set.sheets().get(at + 1)));
        } else if (at > 0) {
            Sheet below = set.sheets().get(at - 1);
            long dearer = sheet.audit().cost().totalMinor() - below.audit().cost().totalMinor();
            given.add(words.text("trade.dearer", money(dearer), tierName(below)));
            given.addAll(against(sheet, below));
        }
        return given;
    }

    private List<String> against(Sheet mine, Sheet other) {
        String than = words.text("trade.than", tierName(other)) + " ";
        return trades.worse(mine.audit(), other.audit()).stream().map(each -> than + each).toList();
    }

    private List<String> missedWishes(Audit audit, List<NeedView> needs) {
        List<String> missed = new ArrayList<>();
        if (!needs.isEmpty()) {
            List<NeedRow> rows = new NeedBook(brief, List.of(audit), words).rows();
            for (int i = 0; i < rows.size(); i++) {
                if (!rows.get(i).must() && !needs.get(i).met()) {
                    NeedRow row = rows.get(i);
                    String title =
                            row.measure().isEmpty()
                                    ? row.title()
                                    : row.title() + ", " + row.measure();
                    missed.add(
                            words.text(
                                    needs.get(i).unsure() ? "trade.unsure" : "trade.wish",
                                    title,
                                    row.asked(),
                                    needs.get(i).promised()));
                }
            }
        }
        return missed;
    }

    private List<Remark> remarks(Audit audit, AuditFinding.Level level) {
        List<Remark> remarks = new ArrayList<>();
        for (AuditFinding finding : audit.findings()) {
            if (finding.level() == level) {
                remarks.add(remark(finding));
            }
        }
        return remarks;
    }

    private Remark remark(AuditFinding finding) {
        return new Remark(
                words.title(finding.rule(), finding.title()), words.say(finding.phrase()));
    }

    private String proof(Sheet sheet) {
        if (sheet.proof().isEmpty()) {
            return words.text(
                    words.has("proof." + sheet.tier()) ? "proof." + sheet.tier() : "proof.none");
        }
        Proof proof = sheet.proof().get();
        if (proof.proven()) {
            return words.text("proof." + proof.figure());
        }
        return Double.isFinite(proof.gapPercent())
                ? words.text(
                        "proof.gap",
                        words.quantity(1, Math.ceil(proof.gapPercent() * 10) / 10, "%"))
                : words.text("proof.open");
    }

    private String money(long minor) {
        return words.money(minor, brief.currency());
    }

    private String amount(long minor) {
        return words.amount(minor, brief.currency());
    }
}
