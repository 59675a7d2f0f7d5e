import type { ButtonHTMLAttributes, ReactNode, Ref } from 'react';

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  readonly look?: 'plain' | 'primary' | 'icon' | 'link' | 'outline';
  readonly children: ReactNode;
  readonly ref?: Ref<HTMLButtonElement>;
}

/** A button in one of the looks of controls.css. An icon alone needs `aria-label`. */
export function Button({ look = 'outline', className, ...rest }: ButtonProps) {
  return (
    <button
      type="button"
      title={look === 'icon' ? rest['aria-label'] : undefined}
      {...rest}
      className={className ? `button ${className}` : 'button'}
      data-look={look}
    />
  );
}
