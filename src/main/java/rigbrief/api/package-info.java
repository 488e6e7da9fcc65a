/**
 * Asking rigbrief from a Java program: one class to begin with, the same answers as the commands.
 */
package rigbrief.api;
