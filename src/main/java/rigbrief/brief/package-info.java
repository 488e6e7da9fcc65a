/** What the client needs: musts, wishes, weights. */
package rigbrief.brief;
