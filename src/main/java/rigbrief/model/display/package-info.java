/** How fine a panel looks from the seat. */
package rigbrief.model.display;
