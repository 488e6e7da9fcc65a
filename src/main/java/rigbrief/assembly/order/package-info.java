/** Turning a build into a list that can be ordered from. */
package rigbrief.assembly.order;
