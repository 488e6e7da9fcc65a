/** Replacing parts of a filed build while disturbing the rest as little as possible. */
package rigbrief.proposal.replace;
