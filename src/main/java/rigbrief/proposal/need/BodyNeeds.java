package rigbrief.proposal.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.function.Function;
import rigbrief.assess.Assessment;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.SizeNeed;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Kind;
import rigbrief.part.Part;
import rigbrief.part.PcCase;
import rigbrief.quantity.Length;
import rigbrief.quantity.Mass;
import rigbrief.quantity.Unit;
import rigbrief.wording.Measured;
import rigbrief.wording.Phrase;

/** What the body of the machine has to be: quiet, small, light. */
final class BodyNeeds {
    /** Louder than any desktop computer, in dB(A). */
    private static final int LOUDEST_DBA = 60;

    /** One usual step of noise: what a listener notices, in dB. Common practice. */
    private static final int NOISE_STEP_DB = 2;

    private static final int LENGTH_STEP_MM = 20;
    private static final int LENGTH_STEPS = 25;
    private static final int MASS_STEP_G = 1_000;
    private static final int MASS_STEPS = 25;

    private BodyNeeds() {}

    static void addMusts(Brief brief, Catalogue catalogue, List<Need> needs) {
        brief.noise().mustDba().ifPresent(dba -> needs.add(noise(dba, Need.Kind.MUST)));
        SizeNeed size = brief.size();
        size.atMostDecilitres().ifPresent(dl -> needs.add(volume(dl, catalogue)));
        size.height().ifPresent(mm -> needs.add(length("height", mm, BodyNeeds::withHeight)));
        size.width().ifPresent(mm -> needs.add(length("width", mm, BodyNeeds::withWidth)));
        size.depth().ifPresent(mm -> needs.add(length("depth", mm, BodyNeeds::withDepth)));
        size.mass().ifPresent(mass -> needs.add(mass(mass)));
    }

    static void addWishes(Brief brief, List<Need> needs) {
        brief.noise().wishDba().ifPresent(dba -> needs.add(noise(dba, Need.Kind.WISH)));
    }

    private static Need noise(int dba, Need.Kind kind) {
        List<Level> looser = new ArrayList<>();
        for (int more = dba + 1; more <= LOUDEST_DBA; more++) {
            looser.add(noise(more));
        }
        return Need.stepped(
                "noise",
                Phrase.of("need.name.noise", dba),
                kind,
                noise(dba),
                it -> withNoise(it, OptionalInt.empty()),
                looser,
                Optional.of(noise(dba + NOISE_STEP_DB)),
                dba > NOISE_STEP_DB ? Optional.of(noise(dba - NOISE_STEP_DB)) : Optional.empty(),
                it ->
                        Phrase.joined(
                                "",
                                List.of(
                                        Measured.of(
                                                Math.max(
                                                        dba * 100L,
                                                        Math.round(it.load().levelDba() * 100)),
                                                Unit.CENTIDECIBEL))));
    }

    private static Level noise(int dba) {
        return new Level(Phrase.data(dba + " dB(A)"), it -> withNoise(it, OptionalInt.of(dba)));
    }

    private static Brief withNoise(Brief brief, OptionalInt mustDba) {
        Brief.Noise noise = brief.noise();
        return new BriefDraft(brief)
                .noise(new Brief.Noise(mustDba, noise.wishDba(), noise.seatDistanceM()))
                .toBrief();
    }

    /** Looser volumes are those that the cases on offer have. */
    private static Need volume(int decilitres, Catalogue catalogue) {
        TreeSet<Integer> volumes = new TreeSet<>();
        for (Part part : catalogue.parts(Kind.CASE)) {
            int volume = Math.toIntExact(((PcCase) part).volumeDecilitres());
            if (volume > decilitres) {
                volumes.add(volume);
            }
        }
        return Need.stepped(
                "size",
                Phrase.of("need.name.size", litres(decilitres)),
                Need.Kind.MUST,
                volume(decilitres),
                it -> withVolume(it, OptionalInt.empty()),
                volumes.stream().map(BodyNeeds::volume).toList(),
                optional(Ladder.DECILITRES.over(decilitres)).map(BodyNeeds::volume),
                optional(Ladder.DECILITRES.under(decilitres)).map(BodyNeeds::volume),
                it -> litres(Math.max(decilitres, it.build().pcCase().volumeDecilitres())));
    }

    private static Level volume(int decilitres) {
        return new Level(litres(decilitres), it -> withVolume(it, OptionalInt.of(decilitres)));
    }

    private static Phrase litres(long decilitres) {
        return WorkloadTargets.plain(decilitres / 10.0, "l");
    }

    static Optional<Integer> optional(OptionalInt value) {
        return value.isEmpty() ? Optional.empty() : Optional.of(value.getAsInt());
    }

    private static Brief withVolume(Brief brief, OptionalInt decilitres) {
        SizeNeed size = brief.size();
        return with(
                brief,
                new SizeNeed(decilitres, size.height(), size.width(), size.depth(), size.mass()));
    }

    private static Brief withHeight(Brief brief, Optional<Length> height) {
        SizeNeed size = brief.size();
        return with(
                brief,
                new SizeNeed(
                        size.atMostDecilitres(), height, size.width(), size.depth(), size.mass()));
    }

    private static Brief withWidth(Brief brief, Optional<Length> width) {
        SizeNeed size = brief.size();
        return with(
                brief,
                new SizeNeed(
                        size.atMostDecilitres(), size.height(), width, size.depth(), size.mass()));
    }

    private static Brief withDepth(Brief brief, Optional<Length> depth) {
        SizeNeed size = brief.size();
        return with(
                brief,
                new SizeNeed(
                        size.atMostDecilitres(), size.height(), size.width(), depth, size.mass()));
    }

    private static Brief withMass(Brief brief, Optional<Mass> mass) {
        SizeNeed size = brief.size();
        return with(
                brief,
                new SizeNeed(
                        size.atMostDecilitres(), size.height(), size.width(), size.depth(), mass));
    }

    private static Brief with(Brief brief, SizeNeed size) {
        return new BriefDraft(brief).size(size).toBrief();
    }

    private static Need length(
            String id, Length asked, BiFunction<Brief, Optional<Length>, Brief> put) {
        int mm = asked.millimetres();
        List<Level> looser = new ArrayList<>();
        for (int step = 1; step <= LENGTH_STEPS; step++) {
            looser.add(length(mm + step * LENGTH_STEP_MM, put));
        }
        return Need.stepped(
                id,
                Phrase.of("need.name." + id, mm),
                Need.Kind.MUST,
                length(mm, put),
                it -> put.apply(it, Optional.empty()),
                looser,
                Optional.of(length(mm + LENGTH_STEP_MM, put)),
                mm > LENGTH_STEP_MM
                        ? Optional.of(length(mm - LENGTH_STEP_MM, put))
                        : Optional.empty(),
                it -> Phrase.data(Math.max(mm, extent(id).apply(it)) + " mm"));
    }

    private static Function<Assessment, Integer> extent(String id) {
        return switch (id) {
            case "height" -> it -> it.build().pcCase().heightMm();
            case "width" -> it -> it.build().pcCase().widthMm();
            default -> it -> it.build().pcCase().depthMm();
        };
    }

    private static Level length(int mm, BiFunction<Brief, Optional<Length>, Brief> put) {
        return new Level(Phrase.data(mm + " mm"), it -> put.apply(it, Optional.of(Length.mm(mm))));
    }

    private static Need mass(Mass asked) {
        int grams = asked.grams();
        List<Level> looser = new ArrayList<>();
        for (int step = 1; step <= MASS_STEPS; step++) {
            looser.add(mass(grams + step * MASS_STEP_G));
        }
        Need whole =
                Need.whole(
                        "mass",
                        Phrase.of("need.name.mass", kilograms(grams)),
                        Need.Kind.MUST,
                        mass(grams),
                        it -> withMass(it, Optional.empty()));
        return Need.stepped(
                whole.id(),
                whole.phrase(),
                whole.kind(),
                whole.asked(),
                whole.dropped(),
                looser,
                Optional.of(mass(grams + MASS_STEP_G)),
                grams > MASS_STEP_G ? Optional.of(mass(grams - MASS_STEP_G)) : Optional.empty(),
                whole.reached());
    }

    private static Level mass(int grams) {
        return new Level(kilograms(grams), it -> withMass(it, Optional.of(Mass.g(grams))));
    }

    private static Phrase kilograms(int grams) {
        return WorkloadTargets.plain(grams / 1000.0, "kg");
    }
}
