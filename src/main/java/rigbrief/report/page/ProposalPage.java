package rigbrief.report.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.brief.Brief;
import rigbrief.proposal.FrontPoint;
import rigbrief.proposal.Proposals;
import rigbrief.report.BuildViewText;

/** The page of a proposal. */
public final class ProposalPage {
    private static final String SCRIPT = "proposal.js";

    private final SheetSet set;
    private final Brief brief;
    private final Words words;

    ProposalPage(SheetSet set, Words words) {
        this.set = set;
        this.brief = set.brief();
        this.words = words;
    }

    /** The page that answers a brief. */
    public static Page of(Proposals answer, Words words) {
        if (answer.mix().isPresent()) {
            return new MixPage(answer, answer.mix().get(), words).page();
        }
        return new ProposalPage(SheetSet.of(answer), words).page();
    }

    Page page() {
        Map<String, Object> model = frame();
        if (set.clash().isPresent()) {
            Clashes.put(model, set.clash().get(), brief, words);
            return Page.still("impossible.ftlh", brief.client(), model);
        }
        builds(model);
        boolean slides = model.containsKey("steps");
        return new Page(
                "proposal.ftlh",
                brief.client(),
                model,
                slides ? Optional.of(SCRIPT) : Optional.empty());
    }

    /** What every page of a brief begins and ends with. */
    Map<String, Object> frame() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("kind", kind());
        model.put("plate", plate());
        model.put("remarks", words.say(set.remarks()));
        model.put("terms", List.of(words.text("glossary.words").split(",")));
        return model;
    }

    /** The same as plain text, of the first build. */
    String text() {
        Sheet first = set.sheets().get(0);
        Optional<NeedBook> needs = needBook(List.of(first.audit()));
        return BuildViewText.write(
                kind() + ": " + brief.client(),
                lead().get(1),
                needs.map(NeedBook::rows).orElse(List.of()),
                views(new BuildViews(set, words), needs).get(0),
                words);
    }

    private String kind() {
        return brief.quantity() == 1
                ? words.text("proposal.kind")
                : words.text("proposal.kind.many", words.number(0, brief.quantity()));
    }

    private List<List<String>> plate() {
        List<List<String>> plate = new ArrayList<>();
        plate.add(List.of(words.text("proposal.plate.brief"), brief.name()));
        plate.add(
                List.of(words.text("proposal.plate.ceiling"), money(brief.ceiling().minorUnits())));
        plate.add(List.of(words.text("proposal.plate.prices"), words.date(set.catalogue().asOf())));
        plate.add(List.of(words.text("proposal.plate.catalogue"), set.catalogue().name()));
        if (brief.quantity() > 1) {
            plate.add(
                    List.of(
                            words.text("proposal.plate.machines"),
                            words.number(0, brief.quantity())));
        }
        return plate;
    }

    private void builds(Map<String, Object> model) {
        List<Audit> stepAudits = stepAudits();
        List<Audit> all = new ArrayList<>(set.sheets().stream().map(Sheet::audit).toList());
        all.addAll(stepAudits);
        BuildViews views = new BuildViews(set, words);
        Optional<NeedBook> needs = needBook(all);
        model.put("needs", needs.map(NeedBook::rows).orElse(List.of()));
        model.put("builds", views(views, needs));
        model.put("lead", lead());
        model.put("currency", brief.currency().getCurrencyCode());
        model.put("rangeNote", rangeNote());
        if (needs.isPresent() && stepAudits.size() > 1) {
            slider(model, stepAudits, views, needs.get());
        }
    }

    String rangeNote() {
        return words.text("proof.range", words.number(0, brief.confidencePercent()));
    }

    /** What is promised; of unfinished builds nothing is. */
    private Optional<NeedBook> needBook(List<Audit> audits) {
        List<Audit> finished =
                audits.stream().filter(audit -> audit.figures().isPresent()).toList();
        return finished.isEmpty()
                ? Optional.empty()
                : Optional.of(new NeedBook(brief, finished, words));
    }

    private List<Audit> stepAudits() {
        Auditor auditor = new Auditor(brief, set.catalogue());
        List<Audit> audits = new ArrayList<>();
        for (FrontPoint point : set.front()) {
            audits.add(auditor.audit(point.build()));
        }
        return audits;
    }

    private List<BuildView> views(BuildViews views, Optional<NeedBook> needs) {
        List<BuildView> all = new ArrayList<>();
        for (Sheet sheet : set.sheets()) {
            boolean finished = sheet.audit().figures().isPresent();
            all.add(
                    views.of(
                            sheet,
                            finished ? needs.orElseThrow().views(sheet.audit()) : List.of()));
        }
        return all;
    }

    /** What the page begins with, on a screen and on paper. */
    private List<String> lead() {
        Sheet first = set.sheets().get(0);
        if (!first.audit().fits()) {
            long breaches =
                    first.audit().findings().stream()
                            .filter(each -> each.level().name().equals("BREACH"))
                            .count();
            String breaks = words.text("proposal.lead.breaks", breaches);
            return List.of(breaks, breaks);
        }
        if (first.proof().isEmpty()) {
            String one = words.text("proposal.lead.one", words.date(set.catalogue().asOf()));
            return List.of(one, one);
        }
        return List.of(
                words.text("proposal.lead", set.sheets().size()),
                words.text("proposal.lead.paper", set.sheets().size()));
    }

    private void slider(
            Map<String, Object> model, List<Audit> audits, BuildViews views, NeedBook needs) {
        FrontChart chart = new FrontChart(set.front(), brief.currency(), words);
        List<StepView> steps = new Steps(set, audits, words, views, needs).views(chart.places());
        model.put("steps", steps);
        model.put("stepsJson", Steps.json(steps));
        model.put("chart", chart.drawing());
        model.put("chartMoney", chart.moneyLabels());
        model.put("chartWishes", chart.wishLabels());
        model.put("chartWords", chart.words());
        model.put("startStep", startStep(steps));
        model.put("beyond", beyond(views));
    }

    /** An unproven proposal may be passed by what lies on the front: then the reader is told. */
    private String beyond(BuildViews views) {
        Sheet dearest = set.sheets().get(set.sheets().size() - 1);
        FrontPoint last = set.front().get(set.front().size() - 1);
        return last.utility() > dearest.audit().utility()
                ? words.text("slider.beyond", views.tierName(dearest), money(last.totalMinor()))
                : "";
    }

    /** The slider starts at the first step that is the middle proposal, else at the first. */
    private int startStep(List<StepView> steps) {
        Sheet middle = set.sheets().get((set.sheets().size() - 1) / 2);
        for (int i = 0; i < steps.size(); i++) {
            if (set.front().get(i).build().equals(middle.audit().build())) {
                return i;
            }
        }
        return 0;
    }

    private String money(long minor) {
        return words.money(minor, brief.currency());
    }
}
