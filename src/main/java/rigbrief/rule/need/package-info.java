/** Rules that come from the client's brief. */
package rigbrief.rule.need;
