package rigbrief.report.page;

import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.build.Build;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Board;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Efficiency;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.WirelessStandard;
import rigbrief.proposal.Choice;
import rigbrief.rule.Rules;

/** Says in the reader's language what a part does for a brief, and what it was chosen over. */
final class PartWords {
    private final Words words;
    private final Currency currency;

    PartWords(Words words, Currency currency) {
        this.words = words;
        this.currency = currency;
    }

    /** What the part in a slot does. */
    String what(Slot slot, Assessment it) {
        Build build = it.build();
        return switch (slot) {
            case PROCESSOR -> processor(it);
            case BOARD -> board(build.board());
            case MEMORY ->
                    words.text(
                            "part.memory",
                            quantity(build.memoryGb(), "GB"),
                            quantity(Math.ceil(it.demand().memoryGb()), "GB"),
                            quantity(it.memoryMts(), "MT/s"));
            case GRAPHICS ->
                    words.text(
                            "part.graphics",
                            quantity(build.graphics().vramGb(), "GB"),
                            quantity(build.graphics().boardPowerW(), "W"),
                            rates(it));
            case DRIVE, SECOND_DRIVE -> drive((Drive) build.part(slot), it);
            case SUPPLY -> supply(it);
            case COOLER -> cooler(it);
            case CASE ->
                    words.text(
                            "part.case",
                            words.quantity(1, build.pcCase().volumeDecilitres() / 10.0, "l"),
                            it.layout().caseFans(),
                            words.quantity(1, it.load().levelDba(), "dB(A)"));
            case FANS ->
                    words.text(
                            "part.fans",
                            build.fanCount(),
                            words.quantity(1, it.load().caseRiseK(), "K"));
            case WIRELESS -> words.text("part.wireless", network(build.wireless().standard()));
            case BRACE -> words.text("part.brace");
            case CABLES -> words.text("part.cables");
            case SYSTEM -> words.text("part.system");
            case DISPLAY ->
                    words.text(
                            "part.display",
                            build.display().resolution().toString(),
                            words.number(0, build.display().refreshHz()));
        };
    }

    private String processor(Assessment it) {
        Processor processor = it.build().processor();
        String cores = words.number(0, processor.performanceCores());
        if (processor.efficiencyCores() > 0) {
            cores =
                    words.text(
                            "part.processor.cores",
                            cores,
                            words.number(0, processor.efficiencyCores()));
        }
        return words.text(
                "part.processor",
                cores,
                words.number(0, processor.sustainedPowerW()),
                runs(it),
                processor.performanceCores() + processor.efficiencyCores());
    }

    private String runs(Assessment it) {
        List<String> runs = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            String title = prediction.workload().title();
            if (prediction.workload() instanceof TaskTime) {
                runs.add(words.text("part.runs.task", title, quantity(prediction.seconds(), "s")));
            } else if (prediction.workload() instanceof FrameRate) {
                runs.add(
                        words.text(
                                "part.runs.frames",
                                title,
                                quantity(100 * prediction.processorUse(), "%")));
            }
        }
        return runs.isEmpty() ? words.text("part.runs.plain") : String.join(" ", runs);
    }

    private String rates(Assessment it) {
        List<String> rates = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            if (prediction.workload() instanceof FrameRate) {
                rates.add(
                        words.text(
                                "part.graphics.rate",
                                prediction.workload().title(),
                                words.number(0, prediction.averageFps()),
                                words.number(0, prediction.lowFps())));
            }
        }
        return rates.isEmpty() ? words.text("part.graphics.plain") : String.join(" ", rates);
    }

    private String board(Board board) {
        long places = board.m2().stream().filter(slot -> !slot.forWireless()).count();
        return words.text(
                "part.board",
                board.socket(),
                board.memorySlots(),
                places,
                board.wireless() == WirelessStandard.NONE
                        ? ""
                        : words.text("part.board.wireless", network(board.wireless())));
    }

    private String network(WirelessStandard standard) {
        return words.text("standard." + standard.word());
    }

    private String drive(Drive drive, Assessment it) {
        return words.text(
                "part.drive",
                quantity(drive.capacityGb(), "GB"),
                quantity(Math.ceil(it.demand().storageGb()), "GB"),
                quantity(drive.readMbs(), "MB"),
                drive.dba() > 0 ? "" : words.text("part.drive.silent"));
    }

    private String supply(Assessment it) {
        Efficiency grade = it.build().supply().efficiency();
        return words.text(
                "part.supply",
                quantity(it.build().supply().watts(), "W"),
                quantity(100 * it.power().supplyShare(), "%"),
                words.text("efficiency." + grade.word()));
    }

    private String cooler(Assessment it) {
        Cooler cooler = it.build().cooler();
        return words.text(
                cooler.type() == CoolerType.AIR ? "part.cooler.air" : "part.cooler.liquid",
                quantity(it.full().processorC(), "°C"),
                cooler.maxDba() > 0
                        ? words.text(
                                "part.cooler.speed", quantity(100 * it.full().coolerShare(), "%"))
                        : "",
                quantity(cooler.radiatorMm(), "mm"));
    }

    private String quantity(double figure, String unit) {
        return words.quantity(0, figure, unit);
    }

    /** What a part was chosen over; empty where that is not known. */
    String choice(Optional<Choice> choice) {
        if (choice.isEmpty()) {
            return "";
        }
        if (choice.get() instanceof Choice.Over over) {
            return words.text(
                    "choice.over",
                    over.other().orElse(words.text("choice.over.empty")),
                    money(over),
                    goal(over));
        }
        return choice.get() instanceof Choice.Only only && only.rule().isPresent()
                ? words.text(
                        "choice.only.rule",
                        only.cheaper(),
                        ruleTitle(only.rule().get()),
                        only.turnedAway())
                : words.text(choice.get() instanceof Choice.Own ? "choice.own" : "choice.only");
    }

    private String money(Choice.Over over) {
        if (over.dearerMinor() == 0) {
            return words.text("choice.same-price");
        }
        return words.text(
                over.dearerMinor() > 0 ? "choice.dearer" : "choice.cheaper",
                words.money(Math.abs(over.dearerMinor()), currency));
    }

    private String goal(Choice.Over over) {
        if (over.goal().isEmpty()) {
            return over.dearerMinor() == 0 ? words.text("choice.alike") : "";
        }
        return words.text(
                "choice.goal",
                words.text("goal." + over.goal().get()),
                hundredths(over.tenThousandths(), over.otherTenThousandths()),
                hundredths(over.otherTenThousandths(), over.tenThousandths()));
    }

    /** Whole numbers where they tell both apart, else with decimals. */
    private String hundredths(int tenThousandths, int other) {
        boolean alike = Math.round(tenThousandths / 100.0) == Math.round(other / 100.0);
        return words.number(alike ? 2 : 0, tenThousandths / 100.0);
    }

    /** A rule's title in the reader's language. */
    String ruleTitle(String rule) {
        if (words.has("rule." + rule)) {
            return words.text("rule." + rule);
        }
        return Rules.ALL.stream()
                .filter(each -> each.info().id().equals(rule))
                .map(each -> each.info().title())
                .findFirst()
                .orElse(rule);
    }
}
