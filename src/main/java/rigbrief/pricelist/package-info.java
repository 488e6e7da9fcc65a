/** What a supplier's price list means for a catalogue: which rows are which parts, what changes. */
package rigbrief.pricelist;
