package rigbrief.presolve;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import rigbrief.assess.Assessor;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.part.Part;
import rigbrief.part.Slot;
import rigbrief.rule.Rules;
import rigbrief.search.RandomBriefs;
import rigbrief.search.RandomBuilds;
import rigbrief.search.SiblingWorld;
import rigbrief.search.SmallWorld;
import rigbrief.world.Siblings;

/**
 * Tries declared directions column by column: in random sound builds one part is put in place of
 * another that differs in one column alone and costs the same.
 */
final class ColumnTrial {
    private static final int STEPS_PER_BUILD = 40;

    private final Map<String, Tally> tallies = new TreeMap<>();
    private final List<String> wrong = new ArrayList<>();
    private int builds;

    /** What was seen of one column. */
    private static final class Tally {
        private int tried;
        private int noticedTurnedRound;
    }

    /** Tries so many builds, from a first seed on. */
    static ColumnTrial of(int firstSeed, int builds) {
        ColumnTrial trial = new ColumnTrial();
        for (int seed = firstSeed; trial.builds < builds; seed++) {
            trial.world(seed);
        }
        return trial;
    }

    /** Where a part declared at least as good broke a rule or lowered the points. */
    List<String> wrong() {
        return wrong;
    }

    /** Columns of which the declared direction was tried. */
    List<String> tried() {
        return columns(true);
    }

    /** Columns of which a direction turned round would have been noticed. */
    List<String> noticedTurnedRound() {
        return columns(false);
    }

    private List<String> columns(boolean tried) {
        List<String> columns = new ArrayList<>();
        tallies.forEach(
                (column, tally) -> {
                    if ((tried ? tally.tried : tally.noticedTurnedRound) > 0) {
                        columns.add(column);
                    }
                });
        return columns;
    }

    private void world(int seed) {
        Random random = new Random(seed);
        Catalogue base = SmallWorld.catalogue(random);
        Brief brief = RandomBriefs.brief(random, base);
        Assessor own = new Assessor(brief, base);
        Candidates candidates = new CandidateFinder(own, Rules.ALL).find();
        if (candidates.impossible()) {
            return;
        }
        Optional<Map<Slot, Candidate>> build = new RandomBuilds(own, candidates, random).next();
        if (build.isPresent()) {
            builds++;
            new Walk(seed, random, new Assessor(brief, SiblingWorld.paired(base)), build.get())
                    .run();
        }
    }

    /** From build to build of one brief, changing one part at a time. */
    private final class Walk {
        private final int seed;
        private final Random random;
        private final Substitution substitution;
        private final TraitReader reader;
        private final Map<Slot, Candidate> choices;

        Walk(int seed, Random random, Assessor assessor, Map<Slot, Candidate> choices) {
            this.seed = seed;
            this.random = random;
            this.substitution = new Substitution(assessor);
            this.reader = new TraitReader(assessor);
            this.choices = new EnumMap<>(choices);
        }

        void run() {
            List<Slot> filled = new ArrayList<>(choices.keySet());
            filled.removeIf(slot -> choices.get(slot).none());
            for (int step = 0; step < STEPS_PER_BUILD; step++) {
                Slot slot = filled.get(random.nextInt(filled.size()));
                Candidate now = choices.get(slot);
                List<Candidate> next = new ArrayList<>();
                String base = Siblings.baseId(now.partOrNull());
                for (Siblings.Pair pair : SiblingWorld.siblings().pairs(base)) {
                    Candidate from = with(now, pair.from());
                    Candidate with = with(now, pair.with());
                    judge(pair.column(), from, with, next);
                    judge(pair.column(), with, from, next);
                }
                if (!next.isEmpty()) {
                    choices.put(slot, next.get(random.nextInt(next.size())));
                }
            }
        }

        private Candidate with(Candidate now, Part part) {
            return new Candidate(now.slot(), now.index(), part, now.pieces(), now.minorBySet());
        }

        private void judge(String column, Candidate worse, Candidate better, List<Candidate> next) {
            Traits of = reader.read(better);
            Traits than = reader.read(worse);
            if (!of.group().equals(than.group()) || !of.coversRules(than)) {
                return;
            }
            boolean goals = of.coversGoals(than);
            boolean mutual = than.coversRules(of) && (!goals || than.coversGoals(of));
            Optional<Substitution.Worth> below = substitution.with(choices, worse);
            Optional<Substitution.Worth> above = substitution.with(choices, better);
            if (above.isPresent() && substitution.broken(choices, better).isEmpty()) {
                next.add(better);
            }
            if (below.isPresent() && substitution.broken(choices, worse).isEmpty()) {
                next.add(worse);
            }
            Tally tally =
                    tallies.computeIfAbsent(
                            worse.slot().kind().word() + "." + column, any -> new Tally());
            if (below.isPresent()) {
                tally.tried += mutual ? 0 : 1;
                if (!asGood(above, below.get(), goals)) {
                    wrong.add(told(column, worse, better));
                }
            }
            if (!mutual && above.isPresent() && !asGood(below, above.get(), goals)) {
                tally.noticedTurnedRound++;
            }
        }

        private boolean asGood(
                Optional<Substitution.Worth> one, Substitution.Worth other, boolean goals) {
            return one.isPresent()
                    && one.get().totalMinor() <= other.totalMinor()
                    && (!goals || one.get().points() >= other.points());
        }

        private String told(String column, Candidate worse, Candidate better) {
            Map<Slot, Candidate> below = new EnumMap<>(choices);
            below.put(worse.slot(), worse);
            Map<Slot, Candidate> above = new EnumMap<>(choices);
            above.put(better.slot(), better);
            return "%s of %s, seed %d, %s: breaks %s, utilities %s, before %s"
                    .formatted(
                            column,
                            worse.slot().word(),
                            seed,
                            better.partOrNull().id(),
                            substitution.broken(choices, better),
                            substitution.utilities(above),
                            substitution.utilities(below));
        }
    }
}
