package rigbrief.model.link;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What each kind of display port carries, four lanes where the standard has lanes.
 *
 * <p>Formula: payload = lanes x line rate x coding. 8b/10b coding passes 0.8; 16b/18b passes 16/18;
 * 128b/132b with link symbols and error correction passes 0.9671.
 *
 * <p>Source: DisplayPort 1.4 and 2.1 (the 0.9671 is section 3.5.2.18 of the latter), HDMI 2.0 and
 * 2.1; HDMI 1.4's 3.4 Gbit/s per channel is from memory.
 *
 * <p>An id that names a version without a rate means: {@code dp2.1} the 10 Gbit/s rate, which every
 * port with the new coding has (the faster ones are optional, so a cell must spell them); {@code
 * hdmi2.1} the 48 Gbit/s rate which that version introduced (a slower port spells its rate).
 */
public enum LinkStandard {
    /** DisplayPort at the reduced bit rate. */
    DP_RBR(Family.DISPLAYPORT, Coding.EIGHT_TEN, 4, 1_620, false, "dp1.0", "dp-rbr"),
    /** DisplayPort at the high bit rate. */
    DP_HBR(Family.DISPLAYPORT, Coding.EIGHT_TEN, 4, 2_700, false, "dp1.1", "dp-hbr"),
    /** DisplayPort 1.2. */
    DP_HBR2(Family.DISPLAYPORT, Coding.EIGHT_TEN, 4, 5_400, false, "dp1.2", "dp-hbr2"),
    /** DisplayPort 1.3: the third rate, not yet with compression. */
    DP_HBR3(Family.DISPLAYPORT, Coding.EIGHT_TEN, 4, 8_100, false, "dp1.3", "dp-hbr3"),
    /** DisplayPort 1.4: the third rate with compression. */
    DP_HBR3_DSC(Family.DISPLAYPORT, Coding.EIGHT_TEN, 4, 8_100, true, "dp1.4", "dp1.4a"),
    /** DisplayPort 2.1 at 10 Gbit/s per lane. */
    DP_UHBR10(
            Family.DISPLAYPORT,
            Coding.LONG_BLOCK,
            4,
            10_000,
            true,
            "dp2.1",
            "dp2.0",
            "dp2.1-uhbr10",
            "dp2.0-uhbr10"),
    /** DisplayPort 2.1 at 13.5 Gbit/s per lane. */
    DP_UHBR13_5(
            Family.DISPLAYPORT,
            Coding.LONG_BLOCK,
            4,
            13_500,
            true,
            "dp2.1-uhbr13.5",
            "dp2.0-uhbr13.5"),
    /** DisplayPort 2.1 at 20 Gbit/s per lane. */
    DP_UHBR20(
            Family.DISPLAYPORT, Coding.LONG_BLOCK, 4, 20_000, true, "dp2.1-uhbr20", "dp2.0-uhbr20"),
    /** HDMI 1.4: three channels up to a 340 MHz character rate. */
    HDMI_1_4(Family.HDMI, Coding.EIGHT_TEN, 3, 3_400, false, "hdmi1.4"),
    /** HDMI 2.0: three channels up to a 600 MHz character rate. */
    HDMI_2_0(Family.HDMI, Coding.EIGHT_TEN, 3, 6_000, false, "hdmi2.0"),
    /** HDMI 2.1 at 3 lanes of 3 Gbit/s: less payload than HDMI 2.0, but with compression. */
    HDMI_FRL9(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 3, 3_000, true, "hdmi2.1-frl9"),
    /** HDMI 2.1 at 3 lanes of 6 Gbit/s. */
    HDMI_FRL18(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 3, 6_000, true, "hdmi2.1-frl18"),
    /** HDMI 2.1 at 4 lanes of 6 Gbit/s. */
    HDMI_FRL24(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 4, 6_000, true, "hdmi2.1-frl24"),
    /** HDMI 2.1 at 4 lanes of 8 Gbit/s. */
    HDMI_FRL32(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 4, 8_000, true, "hdmi2.1-frl32"),
    /** HDMI 2.1 at 4 lanes of 10 Gbit/s. */
    HDMI_FRL40(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 4, 10_000, true, "hdmi2.1-frl40"),
    /** HDMI 2.1 at 4 lanes of 12 Gbit/s. */
    HDMI_FRL48(Family.HDMI, Coding.SIXTEEN_EIGHTEEN, 4, 12_000, true, "hdmi2.1", "hdmi2.1-frl48");

    /** Plugs that fit each other and speak the same language. */
    public enum Family {
        /** DisplayPort. */
        DISPLAYPORT,
        /** HDMI. */
        HDMI
    }

    private enum Coding {
        EIGHT_TEN(8, 10),
        SIXTEEN_EIGHTEEN(16, 18),
        LONG_BLOCK(9_671, 10_000);

        private final int useful;
        private final int sent;

        Coding(int useful, int sent) {
            this.useful = useful;
            this.sent = sent;
        }
    }

    /** Forward error correction, needed with compression on 8b/10b links, in millionths added. */
    private static final long CORRECTION_MILLIONTHS = 24_016;

    private static final long MILLION = 1_000_000;

    private final Family family;
    private final boolean compresses;
    private final String[] ids;
    private final long payloadBitsPerSecond;
    private final long compressedPayloadBitsPerSecond;

    LinkStandard(
            Family family,
            Coding coding,
            int lanes,
            int laneMbitPerSecond,
            boolean compresses,
            String... ids) {
        this.family = family;
        this.compresses = compresses;
        this.ids = ids;
        this.payloadBitsPerSecond =
                lanes * laneMbitPerSecond * MILLION * coding.useful / coding.sent;
        this.compressedPayloadBitsPerSecond = afterCorrection(payloadBitsPerSecond, coding);
    }

    private static long afterCorrection(long bitsPerSecond, Coding coding) {
        // The longer codes count their error correction already.
        long added = coding == Coding.EIGHT_TEN ? CORRECTION_MILLIONTHS : 0;
        return Math.multiplyExact(bitsPerSecond, MILLION) / (MILLION + added);
    }

    /**
     * Gives the port's own id, the one to print.
     *
     * @return as in a catalogue cell, for example {@code dp1.4}
     */
    public String id() {
        return ids[0];
    }

    /**
     * Tells which plugs it fits.
     *
     * @return the family
     */
    public Family family() {
        return family;
    }

    /**
     * Tells whether the standard has display stream compression.
     *
     * @return true from DisplayPort 1.4 and from HDMI 2.1
     */
    public boolean compresses() {
        return compresses;
    }

    /**
     * Gives what is left for the picture after line coding.
     *
     * @return bit/s, rounded down
     */
    public long payloadBitsPerSecond() {
        return payloadBitsPerSecond;
    }

    /**
     * Gives what is left for a compressed picture, error correction paid.
     *
     * @return bit/s, rounded down; counted even where the standard has no compression
     */
    public long compressedPayloadBitsPerSecond() {
        return compressedPayloadBitsPerSecond;
    }

    /**
     * Tells whether blanking travels in compact form, so that clock x bits is only a near guide.
     *
     * @return true for the fixed rate links of HDMI 2.1
     */
    public boolean packsBlanking() {
        return family == Family.HDMI && compresses;
    }

    /**
     * Gives the standard at which a cable between two ports runs: the lesser of the two.
     *
     * @param other the port at the other end
     * @return the lesser standard, or nothing for ports of different families (no adapters)
     */
    public Optional<LinkStandard> common(LinkStandard other) {
        if (family != other.family) {
            return Optional.empty();
        }
        return Optional.of(ordinal() <= other.ordinal() ? this : other);
    }

    /**
     * Finds the standard which a catalogue cell names.
     *
     * @param id for example {@code dp1.4}, {@code hdmi2.1} or {@code dp2.1-uhbr20}
     * @return the standard, or nothing for an unknown id
     */
    public static Optional<LinkStandard> find(String id) {
        return Arrays.stream(values()).filter(it -> Arrays.asList(it.ids).contains(id)).findFirst();
    }

    /**
     * Gives the standard which a catalogue cell names.
     *
     * @param id as for {@link #find}
     * @return the standard
     * @throws IllegalArgumentException for an unknown id
     */
    public static LinkStandard of(String id) {
        return find(id).orElseThrow(() -> unknown(id));
    }

    private static IllegalArgumentException unknown(String id) {
        List<String> known = Arrays.stream(values()).map(LinkStandard::id).toList();
        return new IllegalArgumentException(
                "port: found \"%s\", expected one of %s; name the version".formatted(id, known));
    }
}
