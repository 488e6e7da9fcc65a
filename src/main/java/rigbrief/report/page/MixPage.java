package rigbrief.report.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.proposal.Mix;
import rigbrief.proposal.Proposals;

/** The page of an order in two variants: both builds, each for its share of the machines. */
final class MixPage {
    private final Proposals answer;
    private final Mix mix;
    private final Words words;

    MixPage(Proposals answer, Mix mix, Words words) {
        this.answer = answer;
        this.mix = mix;
        this.words = words;
    }

    Page page() {
        ProposalPage whole = new ProposalPage(SheetSet.of(answer), words);
        Map<String, Object> model = whole.frame();
        List<Audit> audits = List.of(mix.first().audit(), mix.second().audit());
        NeedBook needs = new NeedBook(answer.brief(), audits, words);
        List<BuildView> builds = new ArrayList<>();
        builds.add(view("first", mix.first(), needs));
        builds.add(view("second", mix.second(), needs));
        String lead = lead();
        model.put("lead", List.of(lead, lead));
        model.put("needs", needs.rows());
        model.put("builds", builds);
        model.put("currency", answer.brief().currency().getCurrencyCode());
        model.put("rangeNote", whole.rangeNote());
        return Page.still("proposal.ftlh", answer.brief().client(), model);
    }

    private String lead() {
        return words.text(
                "mix.lead",
                words.number(0, answer.brief().quantity()),
                words.number(0, mix.first().machines()),
                words.number(0, mix.second().machines()),
                words.money(mix.totalMinor(), answer.brief().currency()));
    }

    private BuildView view(String name, Mix.Share share, NeedBook needs) {
        Brief brief = share.record().brief().orElse(answer.brief());
        Sheet sheet = new Sheet(name, share.audit(), List.of(), Optional.empty(), List.of());
        SheetSet alone =
                new SheetSet(
                        brief,
                        answer.catalogue(),
                        List.of(sheet),
                        List.of(),
                        Optional.empty(),
                        List.of());
        return new BuildViews(alone, words).of(sheet, needs.views(share.audit()));
    }
}
