/** What a goal really costs: least totals, the price of every need, and the front between them. */
package rigbrief.proposal.budget;
