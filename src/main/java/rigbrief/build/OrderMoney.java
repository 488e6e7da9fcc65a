package rigbrief.build;

import java.util.Currency;
import java.util.List;
import rigbrief.quantity.Money;

/**
 * Where the money of an order is. Parts alone: delivery, fees and tax are no business of single
 * units.
 *
 * @param planned what the build's parts were to cost when it was filed
 * @param toSpend planned price of what is wanted still
 * @param owed planned price of what was ordered and is not paid
 * @param paid what was paid, whatever became of the parts
 * @param refunded what came back
 * @param toComeBack what was paid for parts that went back, or have to, and did not come back yet
 */
public record OrderMoney(
        Money planned, Money toSpend, Money owed, Money paid, Money refunded, Money toComeBack) {

    static OrderMoney of(List<OrderStatus.Line> lines, Currency currency) {
        Money none = Money.zero(currency);
        OrderMoney sum = new OrderMoney(none, none, none, none, none, none);
        for (OrderStatus.Line line : lines) {
            for (Units units : line.units()) {
                sum = sum.plus(line, units, none);
            }
        }
        return sum;
    }

    private OrderMoney plus(OrderStatus.Line line, Units units, Money none) {
        Money price = line.unitPrice().times(units.count());
        Money spent = units.paid().orElse(none).times(units.count());
        Money back = units.refunded().orElse(none).times(units.count());
        boolean returned = units.state() == PartState.RETURNED;
        boolean counts = !line.aside() && !returned && !line.kept();
        boolean wanted = units.state() == PartState.WANTED;
        boolean unpaid = counts && !wanted && units.paid().isEmpty();
        boolean claimed = (returned || line.aside()) && units.refunded().isEmpty();
        return new OrderMoney(
                planned.plus(counts ? price : none),
                toSpend.plus(counts && wanted ? price : none),
                owed.plus(unpaid ? price : none),
                paid.plus(spent),
                refunded.plus(back),
                toComeBack.plus(claimed ? spent : none));
    }
}
