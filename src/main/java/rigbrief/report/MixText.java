package rigbrief.report;

import java.util.List;
import java.util.stream.Collectors;
import rigbrief.build.Build;
import rigbrief.part.Slot;
import rigbrief.proposal.Mix;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;
import rigbrief.wording.Counted;

/** An order in two variants, in text. */
final class MixText {
    private final TextPage page;
    private final Proposals answer;
    private final Mix mix;

    MixText(TextPage page, Proposals answer, Mix mix) {
        this.page = page;
        this.answer = answer;
        this.mix = mix;
    }

    void write() {
        page.blank()
                .chapter(
                        "TWO VARIANTS",
                        Money.ofMinor(mix.totalMinor(), answer.brief().currency()).toString());
        page.paragraph(0, sentence());
        variant("First variant", mix.first());
        variant("Second variant", mix.second());
        page.section("Proof");
        page.paragraph(
                2,
                "Both keep every rule and every must. "
                        + (mix.proven()
                                ? "Proven: no order in two variants costs less."
                                : "The cheapest order in two variants that was found; that none is"
                                        + " cheaper is not proven."));
    }

    private String sentence() {
        if (mix.changed().isEmpty()) {
            return "No supplier has every part for all %d machines, and the brief allows variants. Both have the same parts, some from other suppliers. From %s together, each delivering once; with today's stock all can be built."
                    .formatted(answer.brief().quantity(), Counted.of(mix.suppliers(), "supplier"));
        }
        String differ =
                mix.changed().stream().map(this::difference).collect(Collectors.joining("; "));
        return "No one build can be had for all %d machines, and the brief allows variants. They differ in the %s: %s. From %s together, each delivering once; with today's stock all can be built."
                .formatted(
                        answer.brief().quantity(),
                        mix.changed().stream().map(Slot::word).collect(Collectors.joining(" and ")),
                        differ,
                        Counted.of(mix.suppliers(), "supplier"));
    }

    private String difference(Slot slot) {
        return "%d with %s, %d with %s"
                .formatted(
                        mix.first().machines(),
                        named(mix.first().audit().build(), slot),
                        mix.second().machines(),
                        named(mix.second().audit().build(), slot));
    }

    private static String named(Build build, Slot slot) {
        return build.has(slot) ? build.part(slot).name() : "none";
    }

    private void variant(String name, Mix.Share share) {
        page.section("%s: %s".formatted(name, Counted.of(share.machines(), "machine")));
        AssessmentText assessment =
                new AssessmentText(page, share.record().brief().orElseThrow(), answer.catalogue());
        assessment.parts(share.audit(), List.of());
        assessment.needs(share.audit());
    }
}
