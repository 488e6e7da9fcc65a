/** Saying what is wrong in an input file, where, and what to do. */
package rigbrief.diagnostic;
