/** Asking the search one brief after another: is there a build, and what is the least total. */
package rigbrief.proposal.solve;
