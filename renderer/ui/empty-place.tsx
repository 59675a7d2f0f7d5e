import type { ReactNode } from 'react';
import './empty-place.css';

/** What an empty place says: what it is, what to do first, one button. */
export function EmptyPlace({
  title,
  children,
  action,
}: {
  title: string;
  children: ReactNode;
  action?: ReactNode;
}) {
  return (
    <div className="empty-place">
      <h2>{title}</h2>
      <div className="second">{children}</div>
      {action}
    </div>
  );
}
