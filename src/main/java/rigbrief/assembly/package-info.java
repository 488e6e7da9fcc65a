/** Turning a build into an order of work at the bench. */
package rigbrief.assembly;
