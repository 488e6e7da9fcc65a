/** Part temperatures, and the quietest fan speeds which keep them under their limits. */
package rigbrief.model.heat;
