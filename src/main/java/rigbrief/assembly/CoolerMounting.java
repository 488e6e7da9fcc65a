package rigbrief.assembly;

import rigbrief.build.Build;
import rigbrief.part.CoolerType;
import rigbrief.part.Fact;
import rigbrief.part.Slot;
import rigbrief.quantity.Length;
import rigbrief.wording.Texts;

/**
 * When the processor's cooler goes on. Common practice throughout; the cooler's manual goes before
 * it.
 */
public enum CoolerMounting {
    /** On the bench, before the board goes into the case. */
    BEFORE_THE_BOARD,
    /** Brackets on the bench; the cooler itself once the board sits and its power lead is in. */
    AFTER_THE_BOARD,
    /** Radiator first, then the board, then the block on the processor. */
    RADIATOR_FIRST,
    /** Board first; then the radiator above or behind it, and the block. */
    RADIATOR_AFTER_THE_BOARD;

    /** Up to this height an air cooler hides neither sockets nor screws, in mm. */
    static final int LOW_MM = 100;

    /** Below this volume no hand gets beside a tall cooler in the case, in tenths of a litre. */
    static final int SMALL_CASE_DECILITRES = 200;

    /** When the build's cooler goes on, the boxed one where none was bought. */
    static CoolerMounting of(Bench bench) {
        Build build = bench.build();
        if (!build.has(Slot.COOLER)) {
            return BEFORE_THE_BOARD;
        }
        if (build.cooler().type() == CoolerType.LIQUID) {
            return bench.it()
                    .layout()
                    .radiator()
                    .map(CoolerMounting::radiator)
                    .orElse(RADIATOR_FIRST);
        }
        return low(build) || smallCase(build) ? BEFORE_THE_BOARD : AFTER_THE_BOARD;
    }

    /** Why then. */
    String why(Build build, Texts texts) {
        return switch (this) {
            case BEFORE_THE_BOARD -> whyBefore(build, texts);
            case AFTER_THE_BOARD -> texts.text("mount.after");
            case RADIATOR_FIRST -> texts.text("mount.radiator-first");
            case RADIATOR_AFTER_THE_BOARD -> texts.text("mount.radiator-after");
        };
    }

    private static CoolerMounting radiator(rigbrief.part.Place place) {
        return switch (place) {
            case TOP, REAR -> RADIATOR_AFTER_THE_BOARD;
            case FRONT, SIDE, BOTTOM -> RADIATOR_FIRST;
        };
    }

    private static String whyBefore(Build build, Texts texts) {
        if (!build.has(Slot.COOLER)) {
            return texts.text("mount.boxed");
        }
        return low(build) ? texts.text("mount.low") : texts.text("mount.small");
    }

    /** A cooler of unknown height is taken for a tall one. */
    static boolean low(Build build) {
        return build.cooler().height() instanceof Fact.Stated<Length> height
                && height.value().millimetres() <= LOW_MM;
    }

    private static boolean smallCase(Build build) {
        return build.pcCase().volumeDecilitres() < SMALL_CASE_DECILITRES;
    }
}
