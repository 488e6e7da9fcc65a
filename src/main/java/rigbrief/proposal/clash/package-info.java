/** Which needs clash, and the least that has to give way. */
package rigbrief.proposal.clash;
