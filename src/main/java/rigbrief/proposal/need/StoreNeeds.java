package rigbrief.proposal.need;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import rigbrief.brief.Brief;
import rigbrief.brief.Brief.MemoryNeed;
import rigbrief.brief.Brief.StorageNeed;
import rigbrief.brief.BriefDraft;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Drive;
import rigbrief.wording.Phrase;

/** How much memory and storage there has to be. */
final class StoreNeeds {
    private StoreNeeds() {}

    static void addMusts(Brief brief, Catalogue catalogue, List<Need> needs) {
        if (brief.memory().atLeastGb() > 0) {
            needs.add(memory(brief.memory().atLeastGb()));
        }
        if (brief.memory().ecc()) {
            needs.add(
                    Need.whole(
                            "memory-ecc",
                            Phrase.of("need.name.memory-ecc"),
                            Need.Kind.MUST,
                            new Level(
                                    Phrase.of("need.yes"),
                                    it -> withMemory(it, it.memory().atLeastGb(), true)),
                            it -> withMemory(it, it.memory().atLeastGb(), false)));
        }
        StorageNeed storage = brief.storage();
        if (storage.atLeastGb() > 0) {
            needs.add(storage(storage.atLeastGb()));
        }
        if (!storage.roomFor().isEmpty()) {
            Phrase words = Names.workloads(catalogue, storage.roomFor());
            needs.add(
                    Need.whole(
                            "room-for",
                            Phrase.of("need.name.room-for", words),
                            Need.Kind.MUST,
                            new Level(words, it -> withRoom(it, storage.roomFor())),
                            it -> withRoom(it, List.of())));
        }
    }

    private static Need memory(int gb) {
        IntFunction<Level> level =
                atLeast ->
                        new Level(
                                Phrase.data(atLeast + " GB"),
                                it -> withMemory(it, atLeast, it.memory().ecc()));
        return Need.stepped(
                "memory",
                Phrase.of("need.name.memory", gb),
                Need.Kind.MUST,
                level.apply(gb),
                it -> withMemory(it, 0, it.memory().ecc()),
                levels(Ladder.MEMORY_GB.allUnder(gb), level),
                BodyNeeds.optional(Ladder.MEMORY_GB.under(gb)).map(level::apply),
                BodyNeeds.optional(Ladder.MEMORY_GB.over(gb)).map(level::apply),
                it -> Phrase.data(Math.min(gb, it.build().memoryGb()) + " GB"));
    }

    private static Need storage(int gb) {
        IntFunction<Level> level =
                atLeast -> new Level(Phrase.data(atLeast + " GB"), it -> withStorage(it, atLeast));
        return Need.stepped(
                "storage",
                Phrase.of("need.name.storage", gb),
                Need.Kind.MUST,
                level.apply(gb),
                it -> withStorage(it, 0),
                levels(Ladder.STORAGE_GB.allUnder(gb), level),
                BodyNeeds.optional(Ladder.STORAGE_GB.under(gb)).map(level::apply),
                BodyNeeds.optional(Ladder.STORAGE_GB.over(gb)).map(level::apply),
                it ->
                        Phrase.data(
                                Math.min(
                                                gb,
                                                it.build().drives().stream()
                                                        .mapToInt(Drive::capacityGb)
                                                        .sum())
                                        + " GB"));
    }

    static List<Level> levels(List<Integer> steps, IntFunction<Level> level) {
        List<Level> levels = new ArrayList<>();
        for (int step : steps) {
            levels.add(level.apply(step));
        }
        return levels;
    }

    private static Brief withMemory(Brief brief, int atLeastGb, boolean ecc) {
        return new BriefDraft(brief).memory(new MemoryNeed(atLeastGb, ecc)).toBrief();
    }

    private static Brief withStorage(Brief brief, int atLeastGb) {
        StorageNeed storage = brief.storage();
        return new BriefDraft(brief)
                .storage(new StorageNeed(atLeastGb, storage.roomFor(), storage.years()))
                .toBrief();
    }

    private static Brief withRoom(Brief brief, List<String> roomFor) {
        StorageNeed storage = brief.storage();
        return new BriefDraft(brief)
                .storage(new StorageNeed(storage.atLeastGb(), roomFor, storage.years()))
                .toBrief();
    }
}
