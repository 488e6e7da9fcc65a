package rigbrief.model.heat;

/**
 * A set of fan speeds and what comes of it.
 *
 * @param caseShare case fans, share of full speed
 * @param coolerShare processor cooler's fans, share of full speed
 * @param cardRatio graphics card's fans, ratio to their reference speed
 * @param processorC processor temperature, °C
 * @param cardC graphics card temperature, °C
 * @param caseRiseK case air above the room, K
 * @param levelDba level at the seat, room floor included, dB(A)
 * @param excessK how far the hotter offender stands above its limit less the margin, K; 0 when both
 *     are cool enough
 */
public record Speeds(
        double caseShare,
        double coolerShare,
        double cardRatio,
        double processorC,
        double cardC,
        double caseRiseK,
        double levelDba,
        double excessK) {}
