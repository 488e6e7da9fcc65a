package rigbrief.model.form;

import rigbrief.model.Expect;

/**
 * How many expansion slots a card of some thickness takes.
 *
 * <p>Formula: thickness / 20.32 mm, rounded up, in whole hundredths of a millimetre.
 *
 * <p>Source: slot pitch of 0.8 inch, from memory; consistent with the card specification's height
 * limits of 0.570 inch + 0.800 inch for each further slot.
 */
public final class SlotPitch {
    private static final long PITCH_HUNDREDTHS = 2_032;
    private static final int HUNDREDTHS = 100;

    private SlotPitch() {}

    /**
     * Gives the slots that a card covers.
     *
     * @param thicknessMm thickness of the card, mm, above 0
     * @return slots
     * @throws IllegalArgumentException for a thickness not above 0
     */
    public static int slots(double thicknessMm) {
        long hundredths = Math.round(Expect.positive(thicknessMm, "thicknessMm") * HUNDREDTHS);
        return (int)
                Math.max(1, Math.floorDiv(hundredths + PITCH_HUNDREDTHS - 1, PITCH_HUNDREDTHS));
    }
}
