/** Which part, if any, fills each slot, and the state of each. */
package rigbrief.build;
