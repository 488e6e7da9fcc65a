/** Air through the case: fans, impedance, operating point and temperature rise. */
package rigbrief.model.air;
