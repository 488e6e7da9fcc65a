package rigbrief.report.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import rigbrief.assess.Prediction;
import rigbrief.assess.Promise;
import rigbrief.audit.Audit;
import rigbrief.brief.Brief;
import rigbrief.report.NeedLine;
import rigbrief.report.page.NeedView.Bar;

/**
 * The measured needs of a brief, and what each build of a page promises for them.
 *
 * <p>All builds share one scale per need, so that their bars can be compared. Rates, times and
 * capacities start at nothing, levels at {@value #FAINTEST_DBA} dB(A), below which no machine and
 * no room is.
 */
final class NeedBook {
    private static final double FAINTEST_DBA = 15;

    /** Room beyond the greatest value. */
    private static final double BEYOND = 1.08;

    private final Brief brief;
    private final Words words;
    private final List<NeedRow> rows = new ArrayList<>();
    private final List<Double> tops = new ArrayList<>();

    /**
     * A book.
     *
     * @param audits every build of the page; all finished, and of the same brief
     */
    NeedBook(Brief brief, List<Audit> audits, Words words) {
        this.brief = brief;
        this.words = words;
        List<NeedLine> first = NeedLine.of(brief, audits.get(0));
        List<Promise> promises = promises(audits.get(0));
        for (int i = 0; i < first.size(); i++) {
            rows.add(i < promises.size() ? row(audits.get(0), promises.get(i)) : row(first.get(i)));
            tops.add(top(i, audits));
        }
    }

    /** The needs, in the order of {@link NeedLine#of}. */
    List<NeedRow> rows() {
        return rows;
    }

    private static List<Promise> promises(Audit audit) {
        return audit.predictions().stream().flatMap(each -> each.promises().stream()).toList();
    }

    private NeedRow row(Audit audit, Promise promise) {
        String title =
                audit.predictions().stream()
                        .map(Prediction::workload)
                        .filter(workload -> workload.id().equals(promise.use()))
                        .findFirst()
                        .orElseThrow()
                        .title();
        boolean time = promise.measure() == Promise.Measure.FINISH;
        return new NeedRow(
                title,
                words.text(
                        switch (promise.measure()) {
                            case AVERAGE -> "measure.average";
                            case LOW -> "measure.low";
                            case FINISH -> "measure.finish";
                        }),
                switch (promise.measure()) {
                    case AVERAGE -> "fps";
                    case LOW -> "low";
                    case FINISH -> "";
                },
                asked(
                        promise.must(),
                        time,
                        amount(asAsked(promise.required()), time ? "s" : "fps")),
                promise.must());
    }

    private static BigDecimal asAsked(double figure) {
        BigDecimal shortest = new BigDecimal(Double.toString(figure)).stripTrailingZeros();
        return shortest.scale() < 0 ? shortest.setScale(0) : shortest;
    }

    private NeedRow row(NeedLine line) {
        return new NeedRow(
                words.text("need." + line.need()),
                "",
                line.need().equals("noise") ? "dba" : "gb",
                asked(line.must(), line.atMost(), amount(line.required(), line.unit())),
                line.must());
    }

    private String asked(boolean must, boolean atMost, String amount) {
        return words.text((must ? "must." : "wish.") + (atMost ? "at-most" : "at-least"), amount);
    }

    private double top(int index, List<Audit> audits) {
        double top = 0;
        for (Audit audit : audits) {
            NeedLine line = NeedLine.of(brief, audit).get(index);
            top = Math.max(top, line.required().doubleValue());
            top = Math.max(top, line.promised().map(BigDecimal::doubleValue).orElse(0.0));
            top = Math.max(top, line.high().map(BigDecimal::doubleValue).orElse(0.0));
        }
        return top * BEYOND;
    }

    /** What one build promises, in the order of {@link #rows}. */
    List<NeedView> views(Audit audit) {
        List<NeedLine> lines = NeedLine.of(brief, audit);
        List<NeedView> views = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            views.add(view(i, lines.get(i)));
        }
        return views;
    }

    private NeedView view(int index, NeedLine line) {
        if (line.promised().isEmpty()) {
            Bar none = bar(index, line, BigDecimal.ZERO);
            return new NeedView(
                    words.text("need.none"), "", verdict(line), line.met(), false, none);
        }
        BigDecimal promised = line.promised().get();
        return new NeedView(
                amount(promised, line.unit()),
                range(line),
                verdict(line),
                line.met(),
                unsure(line),
                bar(index, line, promised));
    }

    private String range(NeedLine line) {
        if (line.low().isEmpty() || line.high().isEmpty()) {
            return words.text("need.computed");
        }
        return ranges(line)
                ? words.text(
                        "need.range",
                        words.number(line.low().get()),
                        words.number(line.high().get()))
                : words.text("need.exact");
    }

    private static boolean ranges(NeedLine line) {
        return line.low().isPresent() && line.high().isPresent() && !line.low().equals(line.high());
    }

    private String verdict(NeedLine line) {
        String verdict = words.text(line.met() ? met(line) : missed(line));
        return ranges(line) && line.chance().isPresent()
                ? verdict + ": " + chance(line.chance().getAsDouble())
                : verdict;
    }

    private static String met(NeedLine line) {
        return line.must() ? "need.kept" : "need.reached";
    }

    /** A figure that reads like the one asked for, and is not, needs a word more. */
    private static String missed(NeedLine line) {
        boolean reads =
                !ranges(line)
                        && line.promised().isPresent()
                        && line.promised().get().compareTo(line.required()) == 0;
        if (unsure(line)) {
            return "need.unsure";
        }
        if (line.must()) {
            return "need.broken";
        }
        return reads ? "need.missed.just" : "need.missed";
    }

    private static boolean unsure(NeedLine line) {
        return !line.met() && ranges(line) && line.chance().orElse(0) >= 0.5;
    }

    private String chance(double chance) {
        if (chance > 0.99) {
            return words.text("need.chance.most");
        }
        return chance < 0.01
                ? words.text("need.chance.least")
                : words.text("need.chance", Math.round(chance * 100));
    }

    private Bar bar(int index, NeedLine line, BigDecimal promised) {
        double zero = line.unit().equals("dB(A)") ? FAINTEST_DBA : 0;
        double low = line.low().orElse(promised).doubleValue();
        double high = line.high().orElse(promised).doubleValue();
        return new Bar(
                at(index, zero, low),
                at(index, zero, high),
                at(index, zero, promised.doubleValue()),
                at(index, zero, line.required().doubleValue()),
                barWords(rows.get(index), line, promised));
    }

    private int at(int index, double zero, double value) {
        double share = (value - zero) / Math.max(1e-9, tops.get(index) - zero);
        return (int) Math.round(Math.max(0, Math.min(1, share)) * Bar.FULL);
    }

    private String barWords(NeedRow row, NeedLine line, BigDecimal promised) {
        String title = row.measure().isEmpty() ? row.title() : row.title() + ", " + row.measure();
        String asked = amount(line.required(), line.unit());
        return ranges(line)
                ? words.text(
                        "need.bar.range",
                        title,
                        amount(promised, line.unit()),
                        words.number(line.low().get()),
                        words.number(line.high().get()),
                        asked)
                : words.text("need.bar", title, amount(promised, line.unit()), asked);
    }

    private String amount(BigDecimal number, String unit) {
        String shown = unit.equals("fps") ? words.text("unit.fps") : unit;
        return words.number(number) + "\u00a0" + shown;
    }
}
