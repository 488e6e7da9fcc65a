/** The front of money and utility: which builds none is both cheaper and better than. */
package rigbrief.proposal.front;
