/** Asking a client in plain words and turning the answers into a brief. */
package rigbrief.intake;
