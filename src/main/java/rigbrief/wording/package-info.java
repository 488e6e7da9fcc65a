/** Saying things as a key with its figures, to be read in the reader's language. */
package rigbrief.wording;
