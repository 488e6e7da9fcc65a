package rigbrief.proposal;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import rigbrief.assess.Assessment;
import rigbrief.assess.Prediction;
import rigbrief.build.Build;
import rigbrief.catalogue.FrameRate;
import rigbrief.catalogue.TaskTime;
import rigbrief.part.Board;
import rigbrief.part.Cooler;
import rigbrief.part.CoolerType;
import rigbrief.part.Drive;
import rigbrief.part.Graphics;
import rigbrief.part.PcCase;
import rigbrief.part.Processor;
import rigbrief.part.Slot;
import rigbrief.part.Supply;
import rigbrief.part.WirelessStandard;
import rigbrief.wording.Counted;

/** Says what a part does for the brief, with figures of this build. */
final class Merits {
    private Merits() {}

    /** A clause without a full stop. */
    static String of(Slot slot, Assessment it) {
        Build build = it.build();
        return switch (slot) {
            case PROCESSOR -> processor(it);
            case BOARD -> board(it);
            case MEMORY -> memory(it);
            case GRAPHICS -> graphics(it);
            case DRIVE, SECOND_DRIVE -> drive((Drive) build.part(slot), it);
            case SUPPLY -> supply(it);
            case COOLER -> cooler(it);
            case CASE -> pcCase(it);
            case FANS ->
                    String.format(
                            Locale.ROOT,
                            "%s keeps the air inside %.1f K over the room under load",
                            build.fanCount() == 1
                                    ? "one case fan more"
                                    : "a set of %d case fans more".formatted(build.fanCount()),
                            it.load().caseRiseK());
            case WIRELESS ->
                    "gives the wireless network asked for, %s"
                            .formatted(build.wireless().standard().word());
            case BRACE ->
                    "carries the card's free end, up to %s"
                            .formatted(
                                    build.brace().maxMass().map(Object::toString).or("its limit"));
            case CABLES -> "one colour for the cables that show";
            case SYSTEM -> "the operating-system licence asked for";
            case DISPLAY ->
                    "shows %s at %d Hz"
                            .formatted(build.display().resolution(), build.display().refreshHz());
        };
    }

    private static String processor(Assessment it) {
        Processor processor = it.build().processor();
        String cores =
                processor.efficiencyCores() == 0
                        ? Counted.of(processor.performanceCores(), "core")
                        : "%d+%d cores"
                                .formatted(
                                        processor.performanceCores(), processor.efficiencyCores());
        return "%s, %d W sustained; %s".formatted(cores, processor.sustainedPowerW(), runs(it));
    }

    private static String graphics(Assessment it) {
        Graphics card = it.build().graphics();
        List<String> rates = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            if (prediction.workload() instanceof FrameRate) {
                rates.add(
                        String.format(
                                Locale.ROOT,
                                "%s at %.0f fps, 1 %% low %.0f",
                                prediction.workload().title(),
                                prediction.averageFps(),
                                prediction.lowFps()));
            }
        }
        return "%d GB, %d W%s"
                .formatted(
                        card.vramGb(),
                        card.boardPowerW(),
                        rates.isEmpty() ? "; drives the screen" : "; " + String.join("; ", rates));
    }

    private static String runs(Assessment it) {
        List<String> runs = new ArrayList<>();
        for (Prediction prediction : it.predictions()) {
            if (prediction.workload() instanceof TaskTime) {
                runs.add(
                        String.format(
                                Locale.ROOT,
                                "%s in %.0f s",
                                prediction.workload().title(),
                                prediction.seconds()));
            } else if (prediction.workload() instanceof FrameRate) {
                runs.add(
                        String.format(
                                Locale.ROOT,
                                "works %.0f %% of the time in %s",
                                100 * prediction.processorUse(),
                                prediction.workload().title()));
            }
        }
        return runs.isEmpty() ? "enough for what is asked" : String.join("; ", runs);
    }

    private static String board(Assessment it) {
        Board board = it.build().board();
        return "socket %s, memory slots: %d, M.2 slots: %d%s"
                .formatted(
                        board.socket(),
                        board.memorySlots(),
                        board.m2().stream().filter(slot -> !slot.forWireless()).count(),
                        board.wireless() == WirelessStandard.NONE
                                ? ""
                                : ", " + board.wireless().word());
    }

    private static String memory(Assessment it) {
        return String.format(
                Locale.ROOT,
                "%d GB of which the work needs %.0f GB, running at %d MT/s",
                it.build().memoryGb(),
                it.demand().memoryGb(),
                it.memoryMts());
    }

    private static String drive(Drive drive, Assessment it) {
        return String.format(
                Locale.ROOT,
                "%d GB of the %.0f GB planned, reads %d MB/s%s",
                drive.capacityGb(),
                it.demand().storageGb(),
                drive.readMbs(),
                drive.dba() > 0 ? "" : ", silent");
    }

    private static String supply(Assessment it) {
        Supply supply = it.build().supply();
        return String.format(
                Locale.ROOT,
                "%d W, %.0f %% used at sustained load, 80 PLUS level %s",
                supply.watts(),
                100 * it.power().supplyShare(),
                supply.efficiency().word());
    }

    private static String cooler(Assessment it) {
        Cooler cooler = it.build().cooler();
        return String.format(
                Locale.ROOT,
                "%s, keeps the processor at %.0f °C flat out%s",
                cooler.type() == CoolerType.AIR
                        ? "air"
                        : "%d mm radiator".formatted(cooler.radiatorMm()),
                it.full().processorC(),
                cooler.maxDba() > 0
                        ? String.format(
                                Locale.ROOT, " at %.0f %% fan speed", 100 * it.full().coolerShare())
                        : "");
    }

    private static String pcCase(Assessment it) {
        PcCase pcCase = it.build().pcCase();
        return String.format(
                        Locale.ROOT,
                        "%.1f l, %s in all, %.1f dB(A) at the seat under load",
                        pcCase.volumeDecilitres() / 10.0,
                        Counted.of(it.layout().caseFans(), "case fan"),
                        it.load().levelDba())
                .toLowerCase(Locale.ROOT)
                .replace("db(a)", "dB(A)");
    }
}
