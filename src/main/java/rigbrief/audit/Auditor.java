package rigbrief.audit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rigbrief.assess.Assessment;
import rigbrief.assess.Assessor;
import rigbrief.assess.Settled;
import rigbrief.audit.Audit.Figures;
import rigbrief.audit.AuditFinding.Level;
import rigbrief.brief.Brief;
import rigbrief.build.Build;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.goal.Goal;
import rigbrief.goal.Goals;
import rigbrief.part.Slot;
import rigbrief.rule.Finding;
import rigbrief.rule.Rule;
import rigbrief.rule.Rules;

/**
 * Judges builds by the rules, goals and models alone.
 *
 * <p>Knows no solver, so that it can judge what no solver made. Confined to one thread.
 */
public final class Auditor {
    private final Assessor assessor;
    private final List<Rule> rules;
    private final List<Goal> goals;

    /**
     * A judge of builds for one brief.
     *
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have
     */
    public Auditor(Brief brief, Catalogue catalogue) {
        this(brief, catalogue, Rules.ALL, Goals.ALL);
    }

    /**
     * A judge of builds of which some parts were ordered before: these are judged at what was paid
     * for them, and need no offer.
     *
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have
     */
    public Auditor(Brief brief, Catalogue catalogue, Settled settled) {
        this(new Assessor(brief, catalogue, settled), Rules.ALL, Goals.ALL);
    }

    Auditor(Brief brief, Catalogue catalogue, List<Rule> rules, List<Goal> goals) {
        this(new Assessor(brief, catalogue), rules, goals);
    }

    private Auditor(Assessor assessor, List<Rule> rules, List<Goal> goals) {
        this.assessor = assessor;
        this.rules = rules;
        this.goals = goals;
    }

    /** The brief by which builds are judged. */
    public Brief brief() {
        return assessor.brief();
    }

    /**
     * The judgement on a filed build. Today's offers enter it, and what was paid only for the parts
     * that this judge knows to be ordered.
     */
    public Audit audit(BuildRecord filed) {
        return audit(filed.build());
    }

    /**
     * The judgement on a build, finished or not.
     *
     * <p>A rule is asked when every required slot it reads is filled; goals, predictions and
     * figures are given when no required slot is empty.
     */
    public Audit audit(Build build) {
        Assessment it = assessor.assess(build);
        List<AuditFinding> findings = new ArrayList<>();
        List<MarginLine> margins = new ArrayList<>();
        for (Rule rule : rules) {
            if (canBeAsked(rule, build)) {
                Finding finding = rule.check(it);
                finding.margin().ifPresent(margin -> margins.add(line(rule, finding)));
                level(finding)
                        .ifPresent(level -> findings.add(remark(rule, finding, level, build)));
            }
        }
        if (build.missing().isEmpty()) {
            findings.addAll(ValidityCheck.of(it));
            findings.addAll(StandardsCheck.of(it));
        }
        findings.sort(Comparator.comparing(AuditFinding::level));
        return build.missing().isEmpty()
                ? whole(it, findings, margins)
                : unfinished(it, findings, margins);
    }

    private Audit whole(Assessment it, List<AuditFinding> findings, List<MarginLine> margins) {
        List<GoalScore> scores = scores(it);
        long points = 0;
        long most = 0;
        for (GoalScore score : scores) {
            points += (long) score.weight() * score.tenThousandths();
            most += (long) score.weight() * Goal.FULL;
        }
        return new Audit(
                it.build(),
                findings,
                margins,
                scores,
                points,
                most,
                it.predictions(),
                it.cost(),
                Optional.of(new Figures(it.power(), it.idle(), it.load(), it.full())));
    }

    private static Audit unfinished(
            Assessment it, List<AuditFinding> findings, List<MarginLine> margins) {
        return new Audit(
                it.build(),
                findings,
                margins,
                List.of(),
                0,
                0,
                List.of(),
                it.cost(),
                Optional.empty());
    }

    private List<GoalScore> scores(Assessment it) {
        List<GoalScore> scores = new ArrayList<>();
        for (Goal goal : goals) {
            int weight = it.brief().wishes().weight(goal.info().id());
            if (weight > 0) {
                scores.add(
                        new GoalScore(
                                goal.info().id(),
                                goal.info().title(),
                                weight,
                                goal.utility(it),
                                goal.because(it)));
            }
        }
        return scores;
    }

    private static boolean canBeAsked(Rule rule, Build build) {
        for (Slot slot : rule.reads()) {
            if (slot.required() && !build.has(slot)) {
                return false;
            }
        }
        return true;
    }

    private static MarginLine line(Rule rule, Finding finding) {
        return new MarginLine(
                rule.info().id(), rule.info().title(), finding.margin().orElseThrow());
    }

    private static AuditFinding remark(Rule rule, Finding finding, Level level, Build build) {
        return new AuditFinding(
                rule.info().id(),
                rule.info().title(),
                level,
                finding.excess(),
                rule.info().unit(),
                finding.phrase(),
                rule.info().source().text(),
                partsRead(rule.reads(), build),
                finding.margin());
    }

    private static List<String> partsRead(Set<Slot> reads, Build build) {
        if (reads.size() == Slot.values().length) {
            return List.of();
        }
        List<String> ids = new ArrayList<>();
        build.filled()
                .forEach(
                        (slot, part) -> {
                            if (reads.contains(slot)) {
                                ids.add(part.id());
                            }
                        });
        return ids;
    }

    private static Optional<Level> level(Finding finding) {
        if (finding instanceof Finding.Breach) {
            return Optional.of(Level.BREACH);
        }
        if (finding instanceof Finding.Caution) {
            return Optional.of(Level.CAUTION);
        }
        return finding instanceof Finding.Note ? Optional.of(Level.NOTE) : Optional.empty();
    }
}
