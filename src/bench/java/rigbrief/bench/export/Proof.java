package rigbrief.bench.export;

/**
 * What a solver says.
 *
 * @param figure least total in minor units, or most points; -1 when there is no build
 * @param proven whether its own proof is whole
 * @param rounds how often it was asked; more than once where rules were added as cuts
 */
public record Proof(long figure, boolean proven, int rounds) {}
