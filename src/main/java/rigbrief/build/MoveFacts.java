package rigbrief.build;

import rigbrief.quantity.Money;

/** Whether what is told with a move can be true. */
final class MoveFacts {
    private MoveFacts() {}

    static void check(Named named, MoveRequest request, PartState from) throws MoveRefused {
        PartState to = request.to();
        boolean onward =
                to == PartState.WANTED || to == PartState.ORDERED || to == PartState.FITTED;
        if (!named.inTheBuild() && onward) {
            throw new MoveRefused(
                    "found %s for %s, which was set aside, expected received, faulty or returned; write one of these"
                            .formatted(to.word(), named.part()));
        }
        if (named.kept() && to == PartState.ORDERED) {
            throw new MoveRefused(
                    "found ordered for %s, expected no order of a part that is the client's own; write received"
                            .formatted(named.part()));
        }
        refuse(
                named.kept() && (request.paid().isPresent() || request.supplier().isPresent()),
                "--paid or --supplier",
                "neither for a part that is the client's own");
        boolean bought = to != PartState.WANTED && to != PartState.RETURNED;
        refuse(
                request.paid().isPresent() && !bought,
                "--paid",
                "it with ordered, received, fitted or faulty only");
        refuse(
                request.supplier().isPresent() && !bought,
                "--supplier",
                "it with ordered, received, fitted or faulty only");
        refuse(
                request.refunded().isPresent() && to != PartState.RETURNED,
                "--refunded",
                "it with returned only");
        refuseMoneyLost(named, to, from);
        refuseTooMuch(named, request, from);
    }

    private static void refuse(boolean wrong, String option, String expected) throws MoveRefused {
        if (wrong) {
            throw new MoveRefused(
                    "%s: found one, expected %s; leave it out".formatted(option, expected));
        }
    }

    /** A cancelled order that was paid is money to come back, which a wanted unit can't tell. */
    private static void refuseMoneyLost(Named named, PartState to, PartState from)
            throws MoveRefused {
        boolean paid =
                named.units().stream()
                        .anyMatch(units -> units.state() == from && units.paid().isPresent());
        if (to == PartState.WANTED && paid) {
            throw new MoveRefused(
                    "found units of %s that are paid, expected unpaid ones to cancel; write returned, and what comes back with --refunded"
                            .formatted(named.part()));
        }
    }

    private static void refuseTooMuch(Named named, MoveRequest request, PartState from)
            throws MoveRefused {
        if (request.refunded().isEmpty()) {
            return;
        }
        Money refunded = request.refunded().get();
        for (Units units : named.units()) {
            boolean more =
                    units.state() == from
                            && units.paid().filter(paid -> paid.compareTo(refunded) >= 0).isEmpty();
            if (more) {
                throw new MoveRefused(
                        "--refunded: found %s, expected no more than what was paid for each %s, %s; correct it"
                                .formatted(
                                        refunded.plain(),
                                        named.part(),
                                        units.paid().map(Money::plain).orElse("nothing")));
            }
        }
    }
}
