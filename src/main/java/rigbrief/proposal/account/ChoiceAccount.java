package rigbrief.proposal.account;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import rigbrief.build.Build;
import rigbrief.explain.Derivation;
import rigbrief.explain.Explanation;
import rigbrief.explain.Topic;
import rigbrief.part.Slot;
import rigbrief.proposal.Choice;
import rigbrief.proposal.PartReason;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Tier;
import rigbrief.quantity.Money;

/** Explains the figures beside what a part was chosen over. */
final class ChoiceAccount {
    private final Supplier<Proposals> answer;
    private final Tier tier;
    private final Build build;

    ChoiceAccount(Supplier<Proposals> answer, Tier tier, Build build) {
        this.answer = answer;
        this.tier = tier;
        this.build = build;
    }

    List<Topic> topics() {
        List<Topic> topics = new ArrayList<>();
        for (Slot slot : build.filled().keySet()) {
            String title = "What the " + slot.word() + " was chosen over";
            topics.add(new Topic("choice." + slot.word(), title, () -> of(slot, title)));
        }
        return topics;
    }

    private Explanation of(Slot slot, String title) {
        Derivation how =
                new Derivation(
                        "choice." + slot.word(),
                        title,
                        "total with the chosen part - total with the best of all others in its"
                                + " place, everything else unchanged",
                        "every candidate of the slot put in its place, and judged as an audit does");
        Optional<Proposal> found = ProofAccount.of(answer.get(), tier);
        Optional<Choice> choice =
                found.filter(one -> one.audit().build().filled().equals(build.filled())).stream()
                        .flatMap(one -> one.reasons().stream())
                        .filter(reason -> reason.slot() == slot)
                        .findFirst()
                        .flatMap(PartReason::choice);
        if (choice.isEmpty()) {
            how.remark("today's search does not propose this build, so nothing was compared");
            return how.givesNothing("");
        }
        return choice.get() instanceof Choice.Over over
                ? over(how, slot, over, found.get())
                : only(how, choice.get());
    }

    private Explanation over(Derivation how, Slot slot, Choice.Over over, Proposal found) {
        long total = found.audit().cost().totalMinor();
        String other = over.other().map(name -> "with " + name).orElse("with the place empty");
        how.fact("total with the chosen part", money(total), code(), "number cost.total");
        how.fact(
                "total " + other,
                money(total - over.dearerMinor()),
                code(),
                "number cost.total of the same list with that " + slot.word());
        over.goal()
                .ifPresent(
                        goal -> {
                            how.fact(
                                    "utility of " + goal + " with the chosen part",
                                    utility(over.tenThousandths()),
                                    "",
                                    "number goal." + goal);
                            how.fact(
                                    "utility of " + goal + " " + other,
                                    utility(over.otherTenThousandths()),
                                    "",
                                    "number goal." + goal + " of the same list with it");
                            how.remark("of all goals but value this one differs most");
                        });
        how.remark("less than nothing: the chosen part is cheaper");
        return how.gives(
                money(over.dearerMinor()),
                code(),
                "{} - {}",
                money(total),
                money(total - over.dearerMinor()));
    }

    private Explanation only(Derivation how, Choice choice) {
        if (choice instanceof Choice.Only only) {
            how.fact("cheaper ones", only.cheaper(), "", "candidates of the slot, tried in turn");
            only.rule()
                    .ifPresent(
                            rule ->
                                    how.fact(
                                            "turned away by the rule " + rule,
                                            only.turnedAway(),
                                            "",
                                            "the first rule that each of them breaks"));
            how.remark("nothing else keeps every rule in this place, so there is no difference");
        } else {
            how.remark("the client's own: nothing else was looked at");
        }
        return how.givesNothing("");
    }

    private BigDecimal money(long minor) {
        return Money.ofMinor(minor, answer.get().brief().currency()).amount();
    }

    private static BigDecimal utility(int tenThousandths) {
        return BigDecimal.valueOf(tenThousandths, 4);
    }

    private String code() {
        return answer.get().brief().currency().getCurrencyCode();
    }
}
