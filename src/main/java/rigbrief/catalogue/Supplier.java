package rigbrief.catalogue;

import rigbrief.quantity.Money;

/**
 * A supplier.
 *
 * @param id stable id
 * @param name its name
 * @param delivery what one delivery costs, whatever is in it
 */
public record Supplier(String id, String name, Money delivery) {}
