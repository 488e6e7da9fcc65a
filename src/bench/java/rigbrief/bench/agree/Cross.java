package rigbrief.bench.agree;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rigbrief.bench.Clock;
import rigbrief.bench.Scenarios;
import rigbrief.bench.Table;
import rigbrief.bench.choco.Choco;
import rigbrief.bench.cpsat.CpSat;
import rigbrief.bench.export.Instance;
import rigbrief.bench.export.Proof;
import rigbrief.brief.Brief;
import rigbrief.catalogue.Catalogue;
import rigbrief.search.Certificate;
import rigbrief.search.Certifier;
import rigbrief.search.Objective;
import rigbrief.search.Problem;
import rigbrief.search.SearchSpace;

/**
 * The least total of every scenario by the certifier, CP-SAT and Choco on the same presolved
 * candidates, each with its own proof; one after the other in one run.
 */
public final class Cross {
    private static final long MOST_ASKED = 500_000;
    private static final long STEPS = 300_000;
    private static final int WORKERS = 2;

    private final Catalogue catalogue;
    private final double seconds;
    private final Table table;
    private final List<Double> againstCpSat = new ArrayList<>();
    private final List<Double> againstChoco = new ArrayList<>();
    private int disagreements;
    private int cpSatUnproven;
    private int chocoUnproven;

    private Cross(Catalogue catalogue, double seconds, int parts) {
        this.catalogue = catalogue;
        this.seconds = seconds;
        this.table =
                new Table(
                        "cross-" + parts,
                        "scenario",
                        "candidates",
                        "tables, wide rules",
                        "least total",
                        "certifier, s",
                        "export, s",
                        "CP-SAT, s",
                        "rounds",
                        "times the certifier",
                        "Choco, s",
                        "times the certifier");
    }

    /**
     * Compares on one catalogue.
     *
     * @param seconds most processor time for one solver and one scenario
     * @return whether none that proved its answer disagreed
     */
    public static boolean run(Path folder, double seconds, Path out) throws IOException {
        CpSat.load();
        Catalogue catalogue = Scenarios.catalogue(folder);
        Cross cross = new Cross(catalogue, seconds, catalogue.partCount());
        List<Brief> briefs = Scenarios.briefs(catalogue);
        // The compiler gets one round to warm up, for all of them alike.
        cross.certify(briefs.get(0));
        for (Brief brief : briefs) {
            cross.compare(brief);
            cross.table.save(out);
        }
        cross.write(out);
        return cross.disagreements == 0;
    }

    private static Problem problem(Brief brief, Catalogue catalogue) {
        return SearchSpace.of(brief, catalogue).within(brief.ceiling().minorUnits());
    }

    private Certificate certify(Brief brief) {
        return new Certifier(problem(brief, catalogue), Objective.leastMoney(), STEPS, () -> false)
                .run(Optional.empty());
    }

    private void compare(Brief brief) throws IOException {
        if (SearchSpace.of(brief, catalogue).candidates().impossible()) {
            return;
        }
        Problem problem = problem(brief, catalogue);
        Clock clock = Clock.start();
        Certificate certificate =
                new Certifier(problem, Objective.leastMoney(), STEPS, () -> false)
                        .run(Optional.empty());
        double own = clock.cpuS();
        long least = certificate.best().map(best -> best.totalMinor()).orElse(-1L);

        clock = Clock.start();
        Instance instance =
                Instance.of(problem(brief, catalogue), Objective.leastMoney(), MOST_ASKED);
        double export = clock.cpuS();
        int candidates = instance.candidates();

        clock = Clock.start();
        Proof sat = CpSat.solve(instance, seconds, WORKERS);
        double satS = clock.cpuS();
        clock = Clock.start();
        Proof choco = Choco.solve(instance, seconds);
        double chocoS = clock.cpuS();

        judge(sat, least, certificate.complete());
        judge(choco, least, certificate.complete());
        cpSatUnproven += sat.proven() ? 0 : 1;
        chocoUnproven += choco.proven() ? 0 : 1;
        againstCpSat.add(satS / own);
        againstChoco.add(chocoS / own);
        table.row(
                brief.name(),
                candidates,
                instance.rules().size() + ", " + instance.wide().size(),
                (least < 0 ? "none" : String.valueOf(least / 100.0))
                        + (certificate.complete() ? "" : " unproven"),
                own,
                export,
                told(satS, sat),
                sat.rounds(),
                times(satS / own, sat),
                told(chocoS, choco),
                times(chocoS / own, choco));
        System.err.println("cross: " + brief.name());
    }

    private void judge(Proof proof, long least, boolean complete) {
        disagreements += proof.proven() && complete && proof.figure() != least ? 1 : 0;
    }

    private static String told(double cpuS, Proof proof) {
        return Table.number(cpuS) + (proof.proven() ? "" : " no proof");
    }

    private static String times(double ratio, Proof proof) {
        return (proof.proven() ? "" : "over ") + Table.number(ratio);
    }

    private void write(Path out) throws IOException {
        table.remark(
                "Processor seconds of all threads, one scenario after the other in one run. At most %.0f s for one solver and one scenario; an unproven run counts with the time it had. Geometric mean against CP-SAT (%d threads) %s, against Choco %s; least %s and %s. Disagreements among proofs: %d; without a proof: CP-SAT %d, Choco %d."
                        .formatted(
                                seconds,
                                WORKERS,
                                Table.number(Agreement.geometricMean(againstCpSat)),
                                Table.number(Agreement.geometricMean(againstChoco)),
                                Table.number(least(againstCpSat)),
                                Table.number(least(againstChoco)),
                                disagreements,
                                cpSatUnproven,
                                chocoUnproven));
        table.write(out);
    }

    private static double least(List<Double> values) {
        return values.stream().mapToDouble(Double::doubleValue).min().orElse(Double.NaN);
    }
}
