/** Reading and writing briefs, catalogues and builds, with all faults at once. */
package rigbrief.file;
