/** Showing how one printed number came about. */
package rigbrief.explain;
