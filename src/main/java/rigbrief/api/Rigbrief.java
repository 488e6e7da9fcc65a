package rigbrief.api;

import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import rigbrief.audit.Audit;
import rigbrief.audit.Auditor;
import rigbrief.audit.OpenBrief;
import rigbrief.brief.Brief;
import rigbrief.build.BuildRecord;
import rigbrief.catalogue.Catalogue;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.file.BriefReader;
import rigbrief.file.BuildReader;
import rigbrief.file.CatalogueReader;
import rigbrief.proposal.Proposals;
import rigbrief.proposal.Proposer;
import rigbrief.proposal.SearchLimits;
import rigbrief.proposal.budget.Budget;
import rigbrief.proposal.budget.BudgetFinder;
import rigbrief.proposal.budget.BudgetLimits;
import rigbrief.proposal.budget.Progress;
import rigbrief.proposal.replace.Disturbance;
import rigbrief.proposal.replace.Limits;
import rigbrief.proposal.replace.Ordered;
import rigbrief.proposal.replace.Replacement;
import rigbrief.proposal.replace.Replacer;
import rigbrief.proposal.replace.Trouble;
import rigbrief.report.AuditAnswer;

/**
 * A parts catalogue that answers briefs: what the command line does, for Java programs.
 *
 * <pre>{@code
 * Rigbrief shop = Rigbrief.open(Path.of("catalog-sample"));
 * Proposals answer = shop.propose(Path.of("scenarios/potter.yaml"));
 * String json = Json.of(answer);
 * }</pre>
 *
 * <p>Immutable, and safe for any number of threads at once: one catalogue, read once, can be asked
 * by all of them. A question works on the thread that asks, {@link #propose} and {@link #budget}
 * with one or two threads beside it that end before the answer is given. The same catalogue, brief
 * and limits give the same answer on every machine, unless a limit on time is set.
 *
 * <p>Nothing is written and nothing is printed. Files that can't be used are refused with {@link
 * BadInput}, which carries every fault with file, line, column and what to do. That no build meets
 * the musts is an answer and no exception: see {@link Proposals#impossible()}.
 */
public final class Rigbrief {
    private final Catalogue catalogue;
    private final List<Fault> notes;
    private final SearchLimits limits;
    private final BooleanSupplier calledOff;

    private Rigbrief(
            Catalogue catalogue,
            List<Fault> notes,
            SearchLimits limits,
            BooleanSupplier calledOff) {
        this.catalogue = Objects.requireNonNull(catalogue, "catalogue");
        this.notes = notes;
        this.limits = Objects.requireNonNull(limits, "limits");
        this.calledOff = Objects.requireNonNull(calledOff, "calledOff");
    }

    /**
     * Reads a catalogue.
     *
     * @param catalogue the catalogue's folder
     * @param overlays folders laid over it, from the lowest to the topmost, as {@code calibrate}
     *     writes them
     * @throws BadInput with all faults of all its files
     */
    public static Rigbrief open(Path catalogue, Path... overlays) throws BadInput {
        List<Path> folders = new ArrayList<>(List.of(catalogue));
        folders.addAll(List.of(overlays));
        CatalogueReader.Reading reading = CatalogueReader.readNoted(folders);
        return new Rigbrief(
                reading.catalogue(), reading.notes(), SearchLimits.usual(), () -> false);
    }

    /** The same over a catalogue that is in memory already. */
    public static Rigbrief of(Catalogue catalogue) {
        return new Rigbrief(catalogue, List.of(), SearchLimits.usual(), () -> false);
    }

    /** The program's version; {@code (not packaged)} where its classes are in no jar. */
    public static String version() {
        String version = Rigbrief.class.getPackage().getImplementationVersion();
        return version == null ? "(not packaged)" : version;
    }

    /**
     * The same catalogue with other limits on the search of {@link #propose}: seed, moves, steps,
     * and a ceiling on time, which alone makes an answer depend on the machine.
     */
    public Rigbrief within(SearchLimits other) {
        return new Rigbrief(catalogue, notes, other, calledOff);
    }

    /**
     * The same catalogue, with questions that can be called off: a search that is called off ends
     * within some milliseconds with the best that it knows, how far that can be from the best, and
     * a remark that says so.
     *
     * @param signal asked some thousand times a second, from more than one thread; once true it
     *     stays true. {@code Thread.currentThread()::isInterrupted} is one, {@code flag::get} of an
     *     {@code AtomicBoolean} another
     */
    public Rigbrief calledOffBy(BooleanSupplier signal) {
        return new Rigbrief(catalogue, notes, limits, signal);
    }

    /** The catalogue. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** What is worth knowing about its files and refuses none, such as columns nobody reads. */
    public List<Fault> notes() {
        return notes;
    }

    /**
     * Reads a brief, YAML or JSON; it is called as the file without its ending.
     *
     * @throws BadInput with all faults of the file
     */
    public Brief brief(Path file) throws BadInput {
        return BriefReader.read(file, catalogue);
    }

    /**
     * Reads a brief to the end of a stream, which stays open; it is called {@value
     * BriefReader#STREAM_NAME}.
     *
     * @param name what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public Brief brief(InputStream in, String name) throws BadInput {
        return BriefReader.read(in, name, catalogue);
    }

    /**
     * Reads a build file or a list of part ids.
     *
     * @throws BadInput with all faults of the file
     */
    public BuildRecord build(Path file) throws BadInput {
        return BuildReader.read(file, catalogue);
    }

    /**
     * Reads a build file or a list of part ids to the end of a stream, which stays open.
     *
     * @param name what the stream is called in faults
     * @throws BadInput with all faults of the text
     */
    public BuildRecord build(InputStream in, String name) throws BadInput {
        return BuildReader.read(in, name, catalogue);
    }

    /**
     * Up to three builds for a brief, with reasons and proof, or what stands in the way.
     *
     * @throws BadInput with all faults of the brief's file
     */
    public Proposals propose(Path brief) throws BadInput {
        return propose(brief(brief));
    }

    /**
     * Up to three builds for a brief, with reasons and proof, or what stands in the way.
     *
     * @throws IllegalArgumentException when the brief names a workload that the catalogue does not
     *     have; a brief that was read with this catalogue never does
     */
    public Proposals propose(Brief brief) {
        return new Proposer(limits, calledOff).propose(brief, catalogue);
    }

    /**
     * Judges a build file by its own brief; by none but that its parts work together where it has
     * none.
     *
     * @throws BadInput with all faults of the file
     */
    public AuditAnswer audit(Path build) throws BadInput {
        BuildRecord filed = build(build);
        return audit(build.toString(), filed, briefOf(filed));
    }

    /**
     * Judges a build by a brief, with no solver in reach. What is ordered or here counts at what
     * was paid, all else at today's offers.
     *
     * @param name what the build is called in the answer
     */
    public AuditAnswer audit(String name, BuildRecord build, Brief brief) {
        Audit audit = new Auditor(brief, catalogue, Ordered.of(build, catalogue)).audit(build);
        return new AuditAnswer(name, brief, catalogue, audit);
    }

    /** The brief in a build file; where there is none, that its parts work together. */
    public Brief briefOf(BuildRecord build) {
        return build.brief().orElseGet(() -> OpenBrief.of(build, catalogue));
    }

    /** What the goals of a brief cost, with the front of money and utility up to its ceiling. */
    public Budget budget(Brief brief) {
        return new BudgetFinder(BudgetLimits.usual(), calledOff, Progress.NONE)
                .find(brief, catalogue, brief.ceiling().minorUnits(), need -> true);
    }

    /**
     * Up to three ways out when parts of a build are gone, faulty or dearer, the least change
     * first; with today's offers of this catalogue.
     *
     * @param trouble what happened since the build was filed; ids of parts, not slots
     */
    public Replacement replace(BuildRecord build, Trouble trouble) {
        Limits usual = Limits.usual();
        return new Replacer(
                        new Limits(usual.steps(), calledOff),
                        Disturbance.usual(catalogue.currency()))
                .replace(build, trouble, catalogue);
    }
}
