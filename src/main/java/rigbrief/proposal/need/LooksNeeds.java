package rigbrief.proposal.need;

import java.util.List;
import java.util.Optional;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.LightingNeed;
import rigbrief.brief.Brief.Looks;
import rigbrief.brief.Brief.Strength;
import rigbrief.brief.BriefDraft;
import rigbrief.wording.Phrase;

/** How the machine should look. */
final class LooksNeeds {
    private LooksNeeds() {}

    static void addMusts(Brief brief, List<Need> needs) {
        Looks looks = brief.looks();
        if (looks.lighting() != LightingNeed.ANY) {
            Phrase words =
                    Phrase.of(
                            looks.lighting() == LightingNeed.NONE
                                    ? "lighting.none"
                                    : "lighting.switchable");
            needs.add(
                    Need.whole(
                            "lighting",
                            Phrase.of("need.name.lighting", words),
                            Need.Kind.MUST,
                            new Level(words, it -> lighting(it, looks.lighting())),
                            it -> lighting(it, LightingNeed.ANY)));
        }
        if (looks.colour().isPresent() && looks.colourStrength() == Strength.MUST) {
            needs.add(colour(looks, Need.Kind.MUST));
        }
        if (looks.side().isPresent()) {
            Phrase words = Phrase.of("side-panel." + looks.side().get().word());
            needs.add(
                    Need.whole(
                            "side",
                            Phrase.of("need.name.side", words),
                            Need.Kind.MUST,
                            new Level(words, it -> side(it, looks)),
                            it ->
                                    side(
                                            it,
                                            new Looks(
                                                    looks.lighting(),
                                                    looks.colour(),
                                                    looks.colourStrength(),
                                                    Optional.empty()))));
        }
    }

    static void addWishes(Brief brief, List<Need> needs) {
        Looks looks = brief.looks();
        if (looks.colour().isPresent() && looks.colourStrength() == Strength.WISH) {
            needs.add(colour(looks, Need.Kind.WISH));
        }
    }

    private static Need colour(Looks looks, Need.Kind kind) {
        Phrase words = Phrase.of("colour." + looks.colour().orElseThrow().word());
        return Need.whole(
                "colour",
                Phrase.of("need.name.colour", words),
                kind,
                new Level(words, it -> colour(it, looks, Strength.MUST)),
                it -> colour(it, looks, Strength.WISH));
    }

    private static Brief lighting(Brief brief, LightingNeed lighting) {
        Looks looks = brief.looks();
        return with(
                brief, new Looks(lighting, looks.colour(), looks.colourStrength(), looks.side()));
    }

    private static Brief colour(Brief brief, Looks wanted, Strength strength) {
        Looks looks = brief.looks();
        return with(brief, new Looks(looks.lighting(), wanted.colour(), strength, looks.side()));
    }

    private static Brief side(Brief brief, Looks wanted) {
        Looks looks = brief.looks();
        return with(
                brief,
                new Looks(looks.lighting(), looks.colour(), looks.colourStrength(), wanted.side()));
    }

    private static Brief with(Brief brief, Looks looks) {
        return new BriefDraft(brief).looks(looks).toBrief();
    }
}
