package rigbrief.batch;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletionService;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.IntConsumer;
import rigbrief.diagnostic.BadInput;
import rigbrief.diagnostic.Fault;
import rigbrief.file.FileRefused;
import rigbrief.proposal.Proposal;
import rigbrief.proposal.Proposals;
import rigbrief.quantity.Money;

/**
 * Answers briefs side by side, each by itself: a failure stops no other, and no result depends on
 * how many are answered at once or in which order they end.
 *
 * <p>A result that is whole and made from the same bytes is not made again.
 */
public final class Batch {
    private final Answering answering;
    private final Writing writing;
    private final Origin origin;
    private final Path out;
    private final boolean force;
    private final BooleanSupplier calledOff;

    /** How a brief is answered; from several threads at once. */
    @FunctionalInterface
    public interface Answering {
        /**
         * The answer to a brief.
         *
         * @throws BadInput with all faults of the file
         */
        Proposals answer(Path brief) throws BadInput;
    }

    /** What is kept of an answer; from several threads at once. */
    @FunctionalInterface
    public interface Writing {
        /** The files of a result: content by name. */
        Map<String, byte[]> files(Proposals answer);
    }

    /**
     * A batch.
     *
     * @param origin what all its results are made from
     * @param out folder of the results, one folder for each
     * @param force whether results that somebody changed are replaced
     * @param calledOff once true, nothing further is begun, and what a search that is under way
     *     finds is not kept
     */
    public Batch(
            Answering answering,
            Writing writing,
            Origin origin,
            Path out,
            boolean force,
            BooleanSupplier calledOff) {
        this.answering = answering;
        this.writing = writing;
        this.origin = origin;
        this.out = out;
        this.force = force;
        this.calledOff = calledOff;
    }

    /**
     * Answers briefs.
     *
     * @param threads how many at once
     * @param progress told how many have ended, each time one has; on the calling thread
     */
    public BatchAnswer run(List<BatchBrief> briefs, int threads, IntConsumer progress) {
        ExecutorService hands = Executors.newFixedThreadPool(threads, Batch::thread);
        try {
            CompletionService<BatchResult> ending = new ExecutorCompletionService<>(hands);
            List<Future<BatchResult>> results = new ArrayList<>();
            briefs.forEach(brief -> results.add(ending.submit(() -> result(brief))));
            for (int done = 1; done <= briefs.size(); done++) {
                ending.take();
                progress.accept(done);
            }
            List<BatchResult> all = new ArrayList<>();
            for (int i = 0; i < briefs.size(); i++) {
                all.add(ended(briefs.get(i), results.get(i)));
            }
            return new BatchAnswer(out, all);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for a batch", e);
        } finally {
            hands.shutdownNow();
        }
    }

    private static Thread thread(Runnable work) {
        Thread thread = new Thread(work, "batch");
        thread.setDaemon(true);
        return thread;
    }

    private static BatchResult ended(BatchBrief brief, Future<BatchResult> result)
            throws InterruptedException {
        try {
            return result.get();
        } catch (ExecutionException failed) {
            Throwable cause = failed.getCause();
            String line =
                    cause instanceof OutOfMemoryError
                            ? "out of memory; allow more: RIGBRIEF_JAVA_OPTIONS=-Xmx2g"
                            : "internal fault: %s: %s; please report this line with the brief"
                                    .formatted(
                                            cause.getClass().getSimpleName(), cause.getMessage());
            return BatchResult.failed(brief, Ending.FAULT, List.of(brief.file() + ": " + line), 1);
        }
    }

    private BatchResult result(BatchBrief brief) {
        if (calledOff.getAsBoolean()) {
            return BatchResult.failed(brief, Ending.CALLED_OFF, List.of(), 0);
        }
        try {
            ResultFolder folder = new ResultFolder(out, brief.result());
            // Before the brief is read: a brief that changes meanwhile is answered anew next time.
            String from = origin.of(brief.file());
            Optional<ResultList> kept = force ? Optional.empty() : kept(folder, from);
            return kept.isPresent()
                    ? BatchResult.of(brief, kept.get().answered(), true)
                    : answered(brief, folder, from);
        } catch (BadInput bad) {
            List<String> lines = bad.faults().stream().map(Fault::text).toList();
            return BatchResult.failed(brief, Ending.BAD_INPUT, lines, bad.count());
        } catch (FileRefused refused) {
            return BatchResult.failed(brief, Ending.NOT_WRITTEN, List.of(refused.getMessage()), 1);
        } catch (IOException failed) {
            String line =
                    "%s: can't be written (%s); choose another --out"
                            .formatted(out.resolve(brief.result()), failed.getMessage());
            return BatchResult.failed(brief, Ending.NOT_WRITTEN, List.of(line), 1);
        }
    }

    /** The result that is there, where it is whole and of the same origin. */
    private static Optional<ResultList> kept(ResultFolder folder, String from) throws IOException {
        if (folder.state() != ResultFolder.State.WHOLE) {
            return Optional.empty();
        }
        return folder.list().filter(list -> list.origin().equals(from));
    }

    private BatchResult answered(BatchBrief brief, ResultFolder folder, String from)
            throws BadInput, IOException {
        folder.refuseIfTaken(force);
        Proposals answer = answering.answer(brief.file());
        Map<String, byte[]> files = calledOff.getAsBoolean() ? Map.of() : writing.files(answer);
        if (calledOff.getAsBoolean()) {
            return BatchResult.failed(brief, Ending.CALLED_OFF, List.of(), 0);
        }
        Answered told = told(answer);
        folder.write(files, from, told, force);
        return BatchResult.of(brief, told, false);
    }

    private static Answered told(Proposals answer) {
        List<TierTotal> totals = new ArrayList<>();
        for (Proposal proposal : answer.proposals()) {
            totals.add(
                    new TierTotal(
                            proposal.tier().word(),
                            money(answer, proposal.audit().cost().totalMinor()),
                            gap(proposal.proof().gapPercent())));
        }
        answer.mix()
                .ifPresent(
                        mix ->
                                totals.add(
                                        new TierTotal(
                                                TierTotal.VARIANTS,
                                                money(answer, mix.totalMinor()),
                                                "")));
        return new Answered(
                answer.impossible() ? Ending.IMPOSSIBLE : Ending.PROPOSED,
                answer.brief().currency().getCurrencyCode(),
                totals);
    }

    /** Rounded up, so that none that exists is told as nought. */
    private static String gap(double percent) {
        return Double.isFinite(percent)
                ? new BigDecimal(percent)
                        .setScale(2, RoundingMode.CEILING)
                        .stripTrailingZeros()
                        .toPlainString()
                : "";
    }

    private static String money(Proposals answer, long minor) {
        return Money.ofMinor(minor, answer.brief().currency()).plain();
    }
}
