/** Numbers that know their unit. */
package rigbrief.quantity;
