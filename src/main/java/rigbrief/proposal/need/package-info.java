/** The needs of a brief one by one: without each, alone, and a step softer or harder. */
package rigbrief.proposal.need;
