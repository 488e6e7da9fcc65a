/** Choosing a title's settings and frame cap for a machine. */
package rigbrief.measurement.tune;
