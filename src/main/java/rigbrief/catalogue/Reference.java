package rigbrief.catalogue;

/**
 * Conditions under which the catalogue's figures hold.
 *
 * @param inletC air temperature at which card levels are stated, in °C
 * @param cardC temperature at which a card sits under those conditions, in °C
 * @param cardLimitC highest temperature planned for a card, in °C
 * @param staleDays age in days from which an offer is called stale
 */
public record Reference(double inletC, double cardC, double cardLimitC, int staleDays) {}
