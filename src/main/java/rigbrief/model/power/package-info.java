/** What a build draws, what its supply stands, and what that means at the wall. */
package rigbrief.model.power;
